package org.bonewright.principles;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.runtime.KieSession;

/** Rules compiled for one test only. */
final class MemoryRules {

  private static final String FOLDER = "src/main/resources/org/bonewright/rules/memory/";
  private static final String HEAD =
      """
      package org.bonewright.rules.memory;
      import org.bonewright.principles.World;
      global org.bonewright.principles.Verdicts verdicts;
      """;

  private final KieBase knowledge;

  /**
   * Compile rules.
   *
   * @param version tells one set of rules from another; each must have its own
   * @param rules the rules without the head of the file
   */
  MemoryRules(String version, Collection<String> rules) {
    knowledge = compiled(version, HEAD + String.join("\n", rules));
  }

  /**
   * Compile a whole file.
   *
   * @param version tells one file from another; each must have its own
   */
  static KieBase compiled(String version, String drl) {
    KieServices services = KieServices.get();
    ReleaseId id = services.newReleaseId("org.bonewright", "rules-in-memory", version);
    KieFileSystem files = services.newKieFileSystem().generateAndWritePomXML(id);
    files.write(FOLDER + "memory.drl", drl);
    KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
    List<Message> errors = builder.getResults().getMessages(Message.Level.ERROR);
    if (!errors.isEmpty()) {
      throw new IllegalStateException("rules do not compile: " + errors);
    }
    return services.newKieContainer(id).getKieBase();
  }

  /** Judge worlds. */
  Verdicts judge(Collection<World> worlds) {
    Verdicts verdicts = new Verdicts();
    run(worlds, verdicts, new DefaultAgendaEventListener());
    return verdicts;
  }

  /** Return the worlds in which each rule fires, by the name of the rule. */
  Map<String, Set<World>> firing(Collection<World> worlds) {
    Map<String, Set<World>> firing = new HashMap<>();
    run(
        worlds,
        new Verdicts(),
        new DefaultAgendaEventListener() {
          @Override
          public void afterMatchFired(AfterMatchFiredEvent event) {
            World world = (World) event.getMatch().getObjects().get(0);
            firing
                .computeIfAbsent(event.getMatch().getRule().getName(), r -> new LinkedHashSet<>())
                .add(world);
          }
        });
    return firing;
  }

  private void run(
      Collection<World> worlds, Verdicts verdicts, DefaultAgendaEventListener listener) {
    KieSession session = knowledge.newKieSession();
    try {
      session.addEventListener(listener);
      session.setGlobal("verdicts", verdicts);
      new ArrayList<>(worlds).forEach(session::insert);
      session.fireAllRules();
    } finally {
      session.dispose();
    }
  }
}
