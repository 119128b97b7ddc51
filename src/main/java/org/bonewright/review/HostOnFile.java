package org.bonewright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.bonewright.casefile.Answer;
import org.bonewright.casefile.Host;
import org.bonewright.measures.Subject;
import org.bonewright.measures.Words;

/**
 * What the file said of the patient as a host before an operation began and can slow union: named,
 * not judged, since the principles on the host judge what is still to be done.
 */
final class HostOnFile {

  private static final Set<Host.Drug> SLOW_UNION =
      Set.of(Host.Drug.NSAID, Host.Drug.STEROID, Host.Drug.IMMUNOSUPPRESSANT);

  private HostOnFile() {}

  /** Return what was on file before a subject began, each as a short clause, in a fixed order. */
  static List<String> before(Subject subject) {
    List<String> told = new ArrayList<>();
    subject
        .latest(finding -> finding.host().flatMap(Host::smoking))
        .filter(smoking -> smoking == Host.Smoking.CURRENT)
        .ifPresent(smoking -> told.add("smoking"));
    subject
        .latest(finding -> finding.host().flatMap(Host::diabetes))
        .filter(diabetes -> diabetes == Answer.YES)
        .ifPresent(diabetes -> told.add("diabetes" + longTermSugar(subject)));
    List<String> drugs =
        subject.latest(finding -> finding.host().flatMap(Host::drugs)).stream()
            .flatMap(List::stream)
            .filter(SLOW_UNION::contains)
            .sorted()
            .map(HostOnFile::name)
            .collect(Collectors.toList());
    told.addAll(drugs);
    return List.copyOf(told);
  }

  private static String longTermSugar(Subject subject) {
    return subject
        .latest(finding -> finding.host().flatMap(Host::hba1cPercent))
        .map(percent -> " with a long-term blood sugar of " + Said.numbers(percent) + " %")
        .orElse("");
  }

  private static String name(Host.Drug drug) {
    return drug == Host.Drug.NSAID ? "anti-inflammatory drug" : Words.of(drug);
  }
}
