package org.bonewright.review;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bonewright.bone.Dimension;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Words;
import org.bonewright.measures.load.UsualLoad;
import org.bonewright.measures.load.UsualLoads;
import org.bonewright.principles.Card;
import org.bonewright.principles.LocalLimit;
import org.bonewright.principles.LocalLoads;
import org.bonewright.principles.LocalSeverity;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.SiteChanges;

/** Puts what a site has set into words, beside what is published. */
public final class LocalWording {

  private final RuleSet rules;

  /** Make the wording for a rule set. */
  public LocalWording(RuleSet rules) {
    this.rules = rules;
  }

  /** Return every change of a site, in the order of its file. */
  public List<LocalChange> changes(SiteChanges site) {
    return Stream.of(
            site.limits().stream().map(this::change),
            site.severities().stream().map(this::change),
            site.loads().stream().map(LocalWording::change))
        .flatMap(changes -> changes)
        .toList();
  }

  LocalChange change(LocalLimit limit) {
    Card card = card(limit.principle());
    Definition measure =
        Optional.ofNullable(card.limits().get(limit.limit()))
            .map(Card.Limit::of)
            .map(card.needs()::get)
            .map(rules::definition)
            .orElseThrow();
    String unit = measure.shownUnit().isEmpty() ? "" : " " + measure.shownUnit();
    String where = limit.where().map(words -> " for " + words).orElse("");
    return change(
        card,
        measure.title() + ", limit " + limit.limit() + where + ":",
        Dimension.number(limit.value()) + unit,
        Dimension.number(limit.published()) + unit,
        limit.grounds());
  }

  LocalChange change(LocalSeverity severity) {
    return change(
        card(severity.principle()),
        "severity:",
        severity.to().word(),
        severity.from().word(),
        severity.grounds());
  }

  static LocalChange change(LocalLoads loads) {
    String bone = Words.written(loads.bone());
    String weight =
        UsualLoads.isOfTheLeg(loads.bone())
            ? ", of " + Dimension.number(UsualLoad.SITE_KG) + " kg body weight"
            : "";
    return new LocalChange(
        Optional.empty(),
        "Loads of the " + bone,
        "with no limit to the load" + weight + ":",
        inWords(loads.loads()),
        inWords(UsualLoads.published().of(loads.bone())),
        loads.grounds().reason(),
        loads.grounds().by(),
        loads.grounds().on());
  }

  private static String inWords(List<UsualLoad> loads) {
    Dimension kg = Dimension.assumed(UsualLoad.SITE_KG, UsualLoad.SITE_KG, "");
    return loads.stream()
        .map(load -> load.activity() + ", " + load.full(kg).inWords())
        .collect(Collectors.joining("; "));
  }

  private static LocalChange change(
      Card card, String what, String local, String published, LocalLimit.Grounds grounds) {
    return new LocalChange(
        Optional.of(card.id()),
        card.title(),
        what,
        local,
        published,
        grounds.reason(),
        grounds.by(),
        grounds.on());
  }

  private Card card(String principle) {
    return rules.card(principle).orElseThrow();
  }
}
