package org.bonewright.principles;

import java.util.Collection;
import java.util.Set;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;

/** Rules of precedence compiled for one test only, of which any may be left aside. */
final class PrecedenceInMemory {

  private static final String HEAD =
      """
      package org.bonewright.rules.memory;
      import org.bonewright.principles.Course;
      import org.bonewright.principles.Judged;
      global org.bonewright.principles.Decisions decisions;
      """;

  private final KieBase knowledge;

  /** Compile rules, each under a name of its own. */
  PrecedenceInMemory(Collection<String> rules) {
    knowledge = MemoryRules.compiled("precedence", HEAD + String.join("\n", rules));
  }

  /** Let only the rules of some names decide. */
  Decisions decide(Collection<?> facts, Set<String> names) {
    Decisions decisions = new Decisions();
    KieSession session = knowledge.newKieSession();
    try {
      session.setGlobal("decisions", decisions);
      facts.forEach(session::insert);
      session.fireAllRules(match -> names.contains(match.getRule().getName()));
    } finally {
      session.dispose();
    }
    return decisions;
  }
}
