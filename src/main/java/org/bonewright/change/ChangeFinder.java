package org.bonewright.change;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.measures.Subject;
import org.bonewright.principles.Card;
import org.bonewright.principles.Judge;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.VerdictKind;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Finds changes to a plan that turn a verdict. Each way of each move that the card names is drawn
 * into the file, read and checked as any file is, and judged in full; what does not fit together is
 * dropped. Of each move the first way that turns the verdict is told. Only stages of the plan are
 * changed: no fact, no operation of the past.
 */
public final class ChangeFinder {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  /** So many ways of a move are tried at the most. */
  private static final int MOST_WAYS = 40;

  private final RuleSet rules;
  private final Judge judge;

  /** Make a finder with these rules. */
  public ChangeFinder(RuleSet rules) {
    this.rules = rules;
    this.judge = new Judge(rules);
  }

  /**
   * Return the changes that turn an unmet or unknown verdict to met or not applicable, in the order
   * of the card's moves.
   *
   * @param file the case file as it was read without error
   * @param principle id of the principle
   * @param subject id of the plan or stage on which it is judged
   * @return nothing where the subject is no plan, or nothing that can be tried turns it
   */
  public List<PlanChange> changes(byte[] file, String principle, String subject) {
    Optional<Card> card = rules.card(principle);
    JsonNode root = JSON.readTree(file);
    Optional<JudgedCase> before = judged(root);
    if (card.isEmpty() || before.isEmpty() || !(root instanceof ObjectNode tree)) {
      return List.of();
    }
    Map<Place, PlanChange.Standing> now = standings(before.get());
    PlanChange.Standing here = now.get(new Place(principle, subject));
    if (here == null || here.badness() == 0) {
      return List.of();
    }
    List<PlanChange> found = new ArrayList<>();
    for (String move : card.get().remedyMoves()) {
      for (String stage : stages(tree, subject)) {
        StageMoves.of(move)
            .flatMap(ways -> first(tree, stage, move, ways, new Place(principle, subject), now))
            .ifPresent(found::add);
      }
    }
    return List.copyOf(found);
  }

  /** Return the names of the moves that can be tried out. */
  public static java.util.Set<String> moves() {
    return StageMoves.names();
  }

  private Optional<PlanChange> first(
      ObjectNode tree,
      String stage,
      String move,
      StageMove ways,
      Place wanted,
      Map<Place, PlanChange.Standing> now) {
    String pointer = pointer(tree, stage);
    JsonNode old = tree.at(pointer);
    if (!(old instanceof ObjectNode drawn)) {
      return Optional.empty();
    }
    List<StageEdit> edits =
        ways.edits(drawn).filter(edit -> !edit.stage().equals(drawn)).limit(MOST_WAYS).toList();
    for (StageEdit edit : edits) {
      Optional<Map<Place, PlanChange.Standing>> then =
          judged(with(tree, pointer, edit.stage())).map(this::standings);
      Optional<PlanChange.Standing> there = then.map(all -> all.get(wanted));
      if (there.filter(standing -> standing.badness() == 0).isPresent()) {
        return Optional.of(change(stage, move, edit, wanted, now, then.orElseThrow()));
      }
    }
    return Optional.empty();
  }

  private PlanChange change(
      String stage,
      String move,
      StageEdit edit,
      Place wanted,
      Map<Place, PlanChange.Standing> before,
      Map<Place, PlanChange.Standing> after) {
    List<PlanChange.Turned> better = new ArrayList<>();
    List<PlanChange.Turned> worse = new ArrayList<>();
    before.forEach(
        (place, was) -> {
          PlanChange.Standing is = after.getOrDefault(place, was);
          if (!place.equals(wanted) && is.badness() != was.badness()) {
            (is.badness() < was.badness() ? better : worse).add(turned(place, was, is));
          }
        });
    return new PlanChange(
        stage, move, edit.words(), after.getOrDefault(wanted, MET).verdict(), better, worse);
  }

  private static final PlanChange.Standing MET =
      new PlanChange.Standing(VerdictKind.MET, Severity.NOTE);

  private PlanChange.Turned turned(Place place, PlanChange.Standing from, PlanChange.Standing to) {
    String title = rules.card(place.principle()).map(Card::title).orElse(place.principle());
    return new PlanChange.Turned(place.principle(), title, place.subject(), from, to);
  }

  /** A principle on a plan or stage. */
  private record Place(String principle, String subject) {}

  private Map<Place, PlanChange.Standing> standings(JudgedCase judged) {
    Map<Place, PlanChange.Standing> standings = new LinkedHashMap<>();
    for (Subject subject : judged.subjects()) {
      if (subject.scope() != Subject.Scope.OPERATION) {
        for (Judgement judgement : judged.of(subject)) {
          standings.put(
              new Place(judgement.card().id(), subject.id()),
              new PlanChange.Standing(
                  judgement.verdict().kind(), judgement.severity().orElse(Severity.NOTE)));
        }
      }
    }
    return standings;
  }

  private Optional<JudgedCase> judged(JsonNode tree) {
    byte[] bytes = tree.toString().getBytes(StandardCharsets.UTF_8);
    Optional<CaseFile> caseFile = new Intake().read(bytes).caseFile();
    return caseFile.map(judge::judge);
  }

  private static ObjectNode with(ObjectNode tree, String pointer, ObjectNode stage) {
    ObjectNode copy = tree.deepCopy();
    int last = pointer.lastIndexOf('/');
    ((tools.jackson.databind.node.ArrayNode) copy.at(pointer.substring(0, last)))
        .set(Integer.parseInt(pointer.substring(last + 1)), stage);
    return copy;
  }

  /** Return the ids of the stages that a subject has, or is. */
  private static List<String> stages(ObjectNode tree, String subject) {
    List<String> ids = new ArrayList<>();
    for (JsonNode plan : tree.path("plans")) {
      for (JsonNode stage : plan.path("stages")) {
        String id = plan.path("id").asString("") + "/" + stage.path("id").asString("");
        if (id.equals(subject) || id.startsWith(subject + "/")) {
          ids.add(id);
        }
      }
    }
    return ids;
  }

  private static String pointer(ObjectNode tree, String id) {
    JsonNode plans = tree.path("plans");
    return IntStream.range(0, plans.size())
        .boxed()
        .flatMap(
            p ->
                IntStream.range(0, plans.get(p).path("stages").size())
                    .filter(
                        s ->
                            id.equals(
                                plans.get(p).path("id").asString("")
                                    + "/"
                                    + plans.get(p).path("stages").get(s).path("id").asString("")))
                    .mapToObj(s -> "/plans/" + p + "/stages/" + s))
        .findFirst()
        .orElse("");
  }
}
