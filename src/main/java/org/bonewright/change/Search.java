package org.bonewright.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import org.bonewright.principles.Card;
import org.bonewright.principles.RuleSet;

/**
 * Walks from a plan by single moves of the cards whose principles it leaves open.
 *
 * <p>It goes down greedily: of what is open the gravest is taken first, and of its options the one
 * that leaves the least open, then the cheapest, then the first of the card. Where no single move
 * leaves less open, the best few are followed by a second one. A plan that opens something critical
 * or major which the first plan did not leave open is never the end of a step. At last every path
 * that has fewer moves is tried, as far as the number of judgings allows.
 */
final class Search {

  /** So many options that gain nothing alone are followed by a second move. */
  private static final int FOLLOWED = 4;

  /** What takes something away waits while something that is open asks for more of it. */
  private static final Map<String, String> WAITS_FOR =
      Map.of("fewer-screws", "add-screw", "leave-out-graft", "add-graft");

  private final RuleSet rules;
  private final Options options;
  private final PlanJudge judge;
  private final IntConsumer progress;
  private final int most;
  private final OpenPlaces places;
  private final Set<Place> failed = new HashSet<>();
  private boolean cut;

  /**
   * Prepare a search.
   *
   * @param most so many plans are judged at the most
   * @param progress is told how many plans were judged so far
   */
  Search(
      RuleSet rules,
      Options options,
      PlanJudge judge,
      OpenPlaces places,
      int most,
      IntConsumer progress) {
    this.rules = rules;
    this.options = options;
    this.judge = judge;
    this.places = places;
    this.most = most;
    this.progress = progress;
  }

  /** Return whether options were left out because enough plans had been judged. */
  boolean wasCut() {
    return cut;
  }

  /** Return the start of all paths. */
  Node start(PlanInFile file, JudgedPlan judged) {
    return new Node(file, judged, List.of(), places.count(judged), Price.of(file.plan()));
  }

  /**
   * Return whether proven infection is left untreated, and no plan against it can be drawn: that
   * comes before all else.
   */
  boolean isInfectionFirst(Node node) {
    return places.grave(node.judged()).stream()
        .filter(place -> places.isCritical(node.judged(), place))
        .filter(this::concernsInfection)
        .anyMatch(place -> offered(node, place).isEmpty());
  }

  /** Return whether something is left open that a plan against infection would close. */
  boolean leavesInfectionOpen(Node node) {
    return places.grave(node.judged()).stream().anyMatch(this::concernsInfection);
  }

  /** Return whether a plan against infection is among the moves of a principle. */
  boolean concernsInfection(Place place) {
    return moves(place).contains(InfectionStages.MOVE);
  }

  /** Return the best plan that the greedy walk reaches; the start where it reaches none. */
  Node down(Node start) {
    Node at = start;
    while (!at.open().isEnough()) {
      Optional<Node> next = better(at);
      if (next.isEmpty()) {
        return at;
      }
      at = next.get();
    }
    return at;
  }

  private Optional<Node> better(Node at) {
    for (Place place : inOrder(at)) {
      List<Node> single = reached(at, place);
      Optional<Node> best = best(at, single.stream()).or(() -> followed(at, single));
      if (best.isPresent()) {
        return best;
      }
      failed.add(place);
    }
    return Optional.empty();
  }

  /**
   * What was tried in vain before comes last. Proven infection goes first where a plan against it
   * can be drawn, then the gravest, then what is soon tried.
   */
  private List<Place> inOrder(Node at) {
    return places.grave(at.judged()).stream()
        .map(place -> new Ways(place, offered(at, place)))
        .sorted(
            Comparator.comparing((Ways ways) -> failed.contains(ways.place()))
                .thenComparing(ways -> !ways.haveStages())
                .thenComparing(ways -> places.isCritical(at.judged(), ways.place()) ? 0 : 1)
                .thenComparing(ways -> ways.options().size()))
        .map(Ways::place)
        .toList();
  }

  /** What can be drawn for a place. */
  private record Ways(Place place, List<Option> options) {

    /** Return whether a plan against infection is among them. */
    boolean haveStages() {
      return options.stream().anyMatch(option -> option.move().equals(InfectionStages.MOVE));
    }
  }

  /**
   * Return the best plan that a second move reaches: for what the first one opened, where it closed
   * what it was for; else for the same once more.
   */
  private Optional<Node> followed(Node at, List<Node> single) {
    List<Node> firsts =
        single.stream()
            .sorted(Comparator.comparing((Node first) -> !closed(first)).thenComparing(Node.BEST))
            .limit(FOLLOWED)
            .toList();
    for (Node first : firsts) {
      List<Place> next =
          closed(first) ? places.opened(at.judged(), first.judged()) : List.of(first.lastPlace());
      for (Place place : next) {
        Optional<Node> best = best(at, reached(first, place).stream());
        if (best.isPresent()) {
          return best;
        }
      }
    }
    return Optional.empty();
  }

  private boolean closed(Node first) {
    return !places.grave(first.judged()).contains(first.lastPlace());
  }

  private Optional<Node> best(Node than, Stream<Node> of) {
    return of.filter(node -> node.open().isBelow(than.open()))
        .filter(node -> !places.opensMore(node.judged()))
        .min(Node.BEST);
  }

  /**
   * Return the best plan with nothing critical or major open among those that the fewest moves
   * reach, if that is fewer than these.
   */
  Optional<Node> shorter(Node start, int moves) {
    List<Node> level = List.of(start);
    for (int depth = 1; depth < moves; depth++) {
      List<Node> next = new ArrayList<>();
      level.stream().sorted(Node.BEST).forEach(node -> all(node).forEach(next::add));
      Optional<Node> end = next.stream().filter(node -> node.open().isEnough()).min(Node.BEST);
      if (end.isPresent()) {
        return end;
      }
      level = distinct(next);
    }
    return Optional.empty();
  }

  private static List<Node> distinct(List<Node> nodes) {
    Map<String, Node> byText = new LinkedHashMap<>();
    nodes.forEach(node -> byText.putIfAbsent(node.file().text(), node));
    return List.copyOf(byText.values());
  }

  /** Return every plan that one move from a plan reaches. */
  Stream<Node> all(Node from) {
    return places.grave(from.judged()).stream().flatMap(place -> reached(from, place).stream());
  }

  private List<Node> reached(Node from, Place place) {
    List<Node> reached = new ArrayList<>();
    for (Option option : offered(from, place)) {
      if (judge.judgings() >= most && !judge.knows(option.file())) {
        cut = true;
        return reached;
      }
      int before = judge.judgings();
      judge
          .judged(option.file())
          .ifPresent(judged -> reached.add(node(from, place, option, judged)));
      if (judge.judgings() > before) {
        progress.accept(judge.judgings());
      }
    }
    return reached;
  }

  /**
   * Return what the moves of a principle's card can draw, but none that would undo what was done on
   * the path, or what something else that is open asks for.
   */
  List<Option> offered(Node from, Place place) {
    return moves(place).stream()
        .filter(move -> from.path().stream().noneMatch(taken -> isOpposed(taken, move)))
        .filter(move -> !waits(from, move))
        .flatMap(move -> options.of(from.file(), move, place.subject()).stream())
        .toList();
  }

  private boolean isOpposed(Node.Taken taken, String move) {
    return rules.moves().opposed().stream()
        .anyMatch(
            pair ->
                pair.contains(move)
                    && pair.contains(taken.option().move())
                    && !move.equals(taken.option().move()));
  }

  private boolean waits(Node from, String move) {
    return Optional.ofNullable(WAITS_FOR.get(move))
        .filter(
            more ->
                places.grave(from.judged()).stream().anyMatch(open -> moves(open).contains(more)))
        .isPresent();
  }

  private List<String> moves(Place place) {
    return rules.card(place.principle()).map(Card::remedyMoves).orElse(List.of());
  }

  private Node node(Node from, Place place, Option option, JudgedPlan judged) {
    List<Node.Taken> path = new ArrayList<>(from.path());
    path.add(new Node.Taken(place, option, from.judged(), judged));
    return new Node(
        option.file(), judged, path, places.count(judged), Price.of(option.file().plan()));
  }
}
