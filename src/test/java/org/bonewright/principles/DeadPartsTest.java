package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every part of a principle changes its verdict somewhere; a part that never does is dead. */
class DeadPartsTest {

  private static final List<RuleText> RULES = RuleText.all(RuleFiles.built());
  private static final Map<String, List<RuleText>> OF_PRINCIPLE =
      RULES.stream().collect(Collectors.groupingBy(RuleText::principle));
  private static final int CHUNK = 200;

  /** Parts that only something that is there can meet: a number asked for, one of several words. */
  private static final Pattern SOME =
      Pattern.compile("value\\(\"(?<number>\\w+)\"\\) != null|choice\\(\"(?<word>\\w+)\"\\) in ");

  /** Rules and alternatives, conditions and words of a list are each left out alone. */
  @Test
  void every_condition_of_every_rule_changes_some_cell() {
    List<Mutant> mutants = new ArrayList<>();
    List<String> drl = new ArrayList<>();
    for (RuleText rule : RULES) {
      drl.add(drl(rule.name(), rule, rule.own()));
      mutants.add(new Mutant(rule, "the whole rule", "no rule has this name"));
      for (RuleText.Shorter shorter : rule.shorter()) {
        String name = "mutant " + mutants.size();
        drl.add(drl(name, rule, shorter.conditions()));
        mutants.add(new Mutant(rule, shorter.dropped(), name));
      }
    }
    Map<String, List<World>> worlds = new HashMap<>();
    AllCells.cards().forEach(card -> worlds.put(card.id(), withNothing(card)));
    Firing firing =
        new Firing(
            new MemoryRules("conditions", drl)
                .firing(worlds.values().stream().flatMap(List::stream).toList()));
    assertThat(
            mutants.stream()
                .filter(mutant -> dead(mutant, worlds.get(mutant.rule().principle()), firing))
                .map(Mutant::shown))
        .as("parts that could be left out without any difference")
        .isEmpty();
  }

  private static String drl(String name, RuleText rule, List<String> conditions) {
    List<String> all = new ArrayList<>(conditions);
    all.add(0, rule.conditions().get(0));
    return "rule \"%s\" when $w : World( %s ) then end".formatted(name, String.join(", ", all));
  }

  /** Return every world of a card, and those without one or all needs that a rule asks to be. */
  private static List<World> withNothing(Card card) {
    List<World> worlds = new ArrayList<>(AllCells.of(card));
    for (RuleText rule : OF_PRINCIPLE.getOrDefault(card.id(), List.of())) {
      Set<String> asked = asked(rule);
      asked.forEach(need -> worlds.addAll(without(card, Set.of(need))));
      if (asked.size() > 1) {
        worlds.addAll(without(card, asked));
      }
    }
    return worlds;
  }

  private static Set<String> asked(RuleText rule) {
    Set<String> asked = new TreeSet<>();
    Matcher some = SOME.matcher(String.join(", ", rule.own()));
    while (some.find()) {
      asked.add(some.group("number") == null ? some.group("word") : some.group("number"));
    }
    return asked;
  }

  private static List<World> without(Card card, Set<String> needs) {
    Set<Map<String, Cell>> without = new LinkedHashSet<>();
    for (World world : AllCells.of(card)) {
      Map<String, Cell> values = new TreeMap<>(world.cells());
      needs.forEach(need -> values.put(need, PlainWorld.none()));
      without.add(values);
    }
    return without.stream().map(values -> PlainWorld.of(card, values)).toList();
  }

  /**
   * A rule with a part left out.
   *
   * @param rule the rule
   * @param dropped the part
   * @param name name of the shorter rule
   */
  private record Mutant(RuleText rule, String dropped, String name) {

    String shown() {
      return rule.name() + ": " + dropped;
    }

    /** Return whether it only asks whether there is such a thing. */
    boolean being() {
      return SOME.matcher(dropped).find();
    }
  }

  /**
   * The worlds in which each rule fires.
   *
   * @param byName the worlds by the name of the rule
   */
  private record Firing(Map<String, Set<World>> byName) {

    boolean of(String rule, World world) {
      return byName.getOrDefault(rule, Set.of()).contains(world);
    }

    /** Return the verdict on a world, with every fault, when one rule is taken for another. */
    Said verdict(World world, RuleText rule, String instead) {
      Verdicts verdicts = new Verdicts();
      for (RuleText each : OF_PRINCIPLE.getOrDefault(rule.principle(), List.of())) {
        if (of(each.equals(rule) ? instead : each.name(), world)) {
          if (each.applies()) {
            verdicts.applies(world);
          } else {
            verdicts.unmet(world, each.grade(), each.limit());
          }
        }
      }
      WorldVerdict verdict = verdicts.of(world);
      boolean unmet = verdict.kind() == VerdictKind.UNMET;
      return new Said(verdict, unmet ? verdicts.faults(world) : Map.of());
    }
  }

  /**
   * What rules say of a world.
   *
   * @param verdict the verdict
   * @param faults every limit that is not kept, with its grade; a certain one is named to people
   */
  private record Said(WorldVerdict verdict, Map<String, Severity> faults) {}

  private static boolean dead(Mutant mutant, List<World> worlds, Firing firing) {
    RuleText rule = mutant.rule();
    return worlds.stream()
        .filter(world -> firing.of(rule.name(), world) != firing.of(mutant.name(), world))
        .filter(world -> mutant.being() || !world.cells().containsValue(PlainWorld.none()))
        .allMatch(
            world ->
                firing
                    .verdict(world, rule, mutant.name())
                    .equals(firing.verdict(world, rule, rule.name())));
  }

  /** A limit counts if a rule says otherwise once the limit lies on the other side of a value. */
  @Test
  void every_limit_changes_some_cell() {
    List<String> dead = new ArrayList<>();
    for (Card card : AllCells.cards()) {
      card.limits().keySet().stream()
          .filter(limit -> !alive(limitMoved(card, limit)))
          .forEach(limit -> dead.add(card.id() + " " + limit));
    }
    assertThat(dead).isEmpty();
  }

  private static List<Changed> limitMoved(Card card, String limit) {
    String need = card.limits().get(limit).of();
    List<Changed> changed = new ArrayList<>();
    for (World world : AllCells.of(card)) {
      Double at = world.limit(limit);
      if (at != null && world.cell(need) instanceof Cell.Span cell && touches(cell, at)) {
        for (double to : new double[] {cell.number() - 1, cell.number(), cell.number() + 1}) {
          Map<String, Double> limits = PlainWorld.limits(card, world.cells());
          limits.put(limit, to);
          changed.add(new Changed(world, new World(card.id(), world.cells(), limits)));
        }
      }
    }
    return changed;
  }

  private static boolean touches(Cell.Span cell, double limit) {
    return cell.low() <= limit && limit <= cell.high();
  }

  @Test
  void every_need_changes_some_cell() {
    List<String> dead = new ArrayList<>();
    for (Card card : AllCells.cards()) {
      card.needs().keySet().stream()
          .filter(need -> !alive(needMoved(card, need)))
          .forEach(need -> dead.add(card.id() + " " + need));
    }
    assertThat(dead).isEmpty();
  }

  /** Worlds with another value of one need, every other value being the same. */
  private static List<Changed> needMoved(Card card, String need) {
    List<Changed> changed = new ArrayList<>();
    Map<List<String>, Set<Cell>> cells = new HashMap<>();
    for (World world : AllCells.of(card)) {
      cells.computeIfAbsent(words(card, need, world), w -> new HashSet<>()).add(world.cell(need));
    }
    for (World world : AllCells.of(card)) {
      for (Cell other : cells.getOrDefault(words(card, need, world), Set.of())) {
        Map<String, Cell> values = new TreeMap<>(world.cells());
        values.put(need, other);
        changed.add(new Changed(world, PlainWorld.of(card, values)));
      }
    }
    return changed;
  }

  /** Return the words of all other needs: where these are the same, so are the limits. */
  private static List<String> words(Card card, String need, World world) {
    return card.needs().keySet().stream()
        .filter(other -> !other.equals(need))
        .map(world::choice)
        .toList();
  }

  /**
   * A world of the table and the same with one part changed.
   *
   * @param world the world
   * @param other the other one
   */
  private record Changed(World world, World other) {}

  /** Return whether the rules tell some world from its change; a dead part is slow to prove. */
  private static boolean alive(List<Changed> changed) {
    for (int from = 0; from < changed.size(); from += CHUNK) {
      List<Changed> chunk = changed.subList(from, Math.min(changed.size(), from + CHUNK));
      Verdicts said = AllCells.RULES.rules().judge(chunk.stream().map(Changed::other).toList());
      if (chunk.stream().anyMatch(c -> !said.of(c.other()).equals(AllCells.said(c.world())))) {
        return true;
      }
    }
    return false;
  }

  /** Two principles on the same measures with the same verdicts everywhere are one principle. */
  @Test
  void no_two_principles_have_the_same_table() {
    List<Card> cards = List.copyOf(AllCells.cards());
    List<String> same = new ArrayList<>();
    for (int i = 0; i < cards.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (measures(cards.get(i)).equals(measures(cards.get(j)))
            && table(cards.get(i)).equals(table(cards.get(j)))) {
          same.add(cards.get(j).id() + " and " + cards.get(i).id());
        }
      }
    }
    assertThat(same).isEmpty();
  }

  private static Set<String> measures(Card card) {
    return Set.copyOf(card.needs().values());
  }

  private static Set<String> table(Card card) {
    Set<String> table = new HashSet<>();
    for (World world : AllCells.of(card)) {
      Map<String, String> byMeasure = new TreeMap<>();
      card.needs().forEach((need, measure) -> byMeasure.put(measure, world.cell(need).shown()));
      table.add(byMeasure + " " + AllCells.said(world));
    }
    return table;
  }
}
