package org.bonewright.principles;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;

/**
 * The compiled rules. They are generated from the rule files when Bonewright is built; here the
 * generated classes are only looked up, which takes a fraction of the time of compiling rules.
 */
final class RuleBase {

  private static final String INDEX = "META-INF/kie/org.bonewright/bonewright/drools-model";

  private final CompletableFuture<KieBase> knowledge;

  RuleBase(Collection<Model> models) {
    this(CompletableFuture.completedFuture(knowledge(models)));
  }

  private RuleBase(CompletableFuture<KieBase> knowledge) {
    this.knowledge = knowledge;
  }

  /**
   * Return the rules that Bonewright was built with. They are loaded on a thread of their own:
   * cards are read and measures taken meanwhile. What goes wrong there is thrown when they are
   * first asked for.
   */
  static RuleBase built() {
    return new RuleBase(
        CompletableFuture.supplyAsync(() -> knowledge(models()), RuleBase::onThreadOfItsOwn));
  }

  /** A new thread finds classes as its maker does; those of the common pool do not. */
  private static void onThreadOfItsOwn(Runnable loading) {
    Thread thread = new Thread(loading, "compiled rules");
    thread.setDaemon(true);
    thread.start();
  }

  private static KieBase knowledge(Collection<Model> models) {
    return KieBaseBuilder.createKieBaseFromModel(List.copyOf(models));
  }

  private KieBase knowledge() {
    try {
      return knowledge.join();
    } catch (CompletionException fault) {
      throw new IllegalStateException("the rules could not be loaded", fault.getCause());
    }
  }

  /** Return the generated models, one for each folder of rules. */
  static List<Model> models() {
    List<Model> models = new ArrayList<>();
    for (String line : index().lines().toList()) {
      if (!line.isBlank() && !line.contains(":")) {
        models.add(model(line.strip()));
      }
    }
    if (models.isEmpty()) {
      throw new IllegalStateException("built without rules");
    }
    return models;
  }

  private static String index() {
    try (InputStream in = RuleBase.class.getClassLoader().getResourceAsStream(INDEX)) {
      if (in == null) {
        throw new IllegalStateException("built without rules: " + INDEX);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Model model(String className) {
    try {
      return Class.forName(className)
          .asSubclass(Model.class)
          .getDeclaredConstructor()
          .newInstance();
    } catch (ClassNotFoundException
        | NoSuchMethodException
        | InstantiationException
        | IllegalAccessException
        | InvocationTargetException e) {
      throw new IllegalStateException("built without the rules of " + className, e);
    }
  }

  /** Return the number of rules. */
  int size() {
    return knowledge().getKiePackages().stream().mapToInt(p -> p.getRules().size()).sum();
  }

  /** Judge worlds; the order in which they come makes no difference. */
  Verdicts judge(Collection<World> worlds) {
    Verdicts verdicts = new Verdicts();
    run("verdicts", verdicts, worlds);
    return verdicts;
  }

  /** Let the rules of precedence decide over facts. */
  Decisions decide(Collection<?> facts) {
    Decisions decisions = new Decisions();
    run("decisions", decisions, facts);
    return decisions;
  }

  private void run(String global, Object collector, Collection<?> facts) {
    KieSession session = knowledge().newKieSession();
    try {
      session.setGlobal(global, collector);
      facts.forEach(session::insert);
      session.fireAllRules();
    } finally {
      session.dispose();
    }
  }
}
