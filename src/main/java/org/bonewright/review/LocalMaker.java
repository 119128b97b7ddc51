package org.bonewright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.bonewright.principles.Decisions;
import org.bonewright.principles.Judge;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.LocalLimit;
import org.bonewright.principles.LocalLoads;
import org.bonewright.principles.LocalSeverity;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.Severity;
import org.bonewright.principles.SiteChanges;
import org.bonewright.principles.VerdictKind;

/** Holds every verdict by a site's limits against the one by the published limits. */
final class LocalMaker {

  private final RuleSet rules;
  private final LocalWording wording;
  private final JudgedCase judged;
  private final Optional<JudgedCase> published;

  /**
   * Prepare; the case is judged a second time where a site has changed something.
   *
   * @param rules the rules by which the case was judged
   * @param judged the case
   */
  LocalMaker(RuleSet rules, JudgedCase judged) {
    this.rules = rules;
    this.wording = new LocalWording(rules);
    this.judged = judged;
    this.published = rules.published().map(without -> new Judge(without).judge(judged.caseFile()));
  }

  /** Return what must stand beside a verdict, if a site has to do with it. */
  Optional<LocalNote> note(Judgement judgement) {
    return rules
        .site()
        .map(site -> new LocalNote(changes(site, judgement), byPublished(judgement)))
        .filter(note -> !note.changes().isEmpty() || note.byPublished().isPresent());
  }

  /** Return what a site has changed in this review, if it is that of a site. */
  Optional<LocalLimits> section() {
    return rules.site().map(this::section);
  }

  private LocalLimits section(SiteChanges site) {
    List<LocalLimits.InUse> inUse = new ArrayList<>();
    for (LocalLimit limit : site.limits()) {
      add(inUse, wording.change(limit), judgement -> holding(site, judgement).contains(limit));
    }
    for (LocalSeverity severity : site.severities()) {
      add(inUse, wording.change(severity), judgement -> isStep(severity, judgement));
    }
    for (LocalLoads loads : site.loads()) {
      add(inUse, LocalWording.change(loads), judgement -> loads(site, judgement).contains(loads));
    }
    List<Judgement> differing = all().filter(j -> byPublished(j).isPresent()).toList();
    return new LocalLimits(
        site.name(),
        site.hash(),
        site.invented(),
        List.copyOf(inUse),
        differing.stream()
            .filter(judgement -> changes(site, judgement).isEmpty())
            .map(this::differing)
            .toList(),
        site.limits().size() + site.severities().size() + site.loads().size() - inUse.size(),
        differing.size());
  }

  private void add(
      List<LocalLimits.InUse> inUse, LocalChange change, Predicate<Judgement> concerns) {
    List<Judgement> mine =
        all()
            .filter(j -> change.principle().isEmpty() || change.isOf(j.card().id()))
            .filter(concerns)
            .toList();
    if (!mine.isEmpty()) {
      List<LocalLimits.Differing> differing =
          mine.stream().filter(j -> byPublished(j).isPresent()).map(this::differing).toList();
      inUse.add(new LocalLimits.InUse(change, differing));
    }
  }

  private Stream<Judgement> all() {
    return judged.judgements().values().stream().flatMap(List::stream);
  }

  private List<LocalChange> changes(SiteChanges site, Judgement judgement) {
    return Stream.of(
            holding(site, judgement).stream().map(wording::change),
            site.severities(judgement.card()).stream()
                .filter(severity -> isStep(severity, judgement))
                .map(wording::change),
            loads(site, judgement).stream().map(LocalWording::change))
        .flatMap(some -> some)
        .toList();
  }

  private List<LocalLoads> loads(SiteChanges site, Judgement judgement) {
    return says(judgement)
        ? site.loads(judged.caseFile(), judgement.card(), rules).stream().toList()
        : List.of();
  }

  /** A limit says nothing of what does not apply, unless it is the limit that makes it so. */
  private List<LocalLimit> holding(SiteChanges site, Judgement judgement) {
    return says(judgement) ? site.holding(judgement, rules) : List.of();
  }

  private boolean says(Judgement judgement) {
    return !judgement.is(VerdictKind.NOT_APPLICABLE) || byPublished(judgement).isPresent();
  }

  private static boolean isStep(LocalSeverity severity, Judgement judgement) {
    return judgement.steps().stream()
        .anyMatch(step -> step.step() == Decisions.Step.SITE && step.from() == severity.from());
  }

  private LocalLimits.Differing differing(Judgement judgement) {
    return new LocalLimits.Differing(
        judgement.subject(),
        judgement.card().id(),
        judgement.card().title(),
        standing(judgement),
        byPublished(judgement).orElseThrow());
  }

  private Optional<String> byPublished(Judgement here) {
    return published
        .flatMap(
            without ->
                without.judgements().getOrDefault(here.subject(), List.of()).stream()
                    .filter(other -> other.card().id().equals(here.card().id()))
                    .findFirst())
        .filter(
            other ->
                other.verdict().kind() != here.verdict().kind()
                    || !other.severity().equals(here.severity()))
        .map(LocalMaker::standing);
  }

  private static String standing(Judgement judgement) {
    Optional<String> severity = judgement.severity().map(Severity::word);
    return switch (judgement.verdict().kind()) {
      case MET -> "met";
      case UNMET -> "unmet" + severity.map(s -> " (" + s + ")").orElse("");
      case UNKNOWN -> "open" + severity.map(s -> " (at worst " + s + ")").orElse("");
      case NOT_APPLICABLE -> "not applicable";
    };
  }
}
