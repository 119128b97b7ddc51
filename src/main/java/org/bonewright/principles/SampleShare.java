package org.bonewright.principles;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.bonewright.measures.Reading;

/**
 * How many samples of a mechanical model give a verdict.
 *
 * @param samples how many samples there are
 * @param counts how many of them give the verdict; for an unknown one how many give each kind
 * @param decides the assumption that moves the model most, in a few words; may be empty
 */
public record SampleShare(int samples, List<Count> counts, String decides) {

  /** Keep the list as it is now. */
  public SampleShare {
    counts = List.copyOf(counts);
  }

  /**
   * How many samples give one kind of verdict. The two numbers differ where it hangs on something
   * else that is not known.
   *
   * @param verdict the kind
   * @param fewest how many at least
   * @param most how many at most
   */
  public record Count(VerdictKind verdict, int fewest, int most) {

    private String inWords() {
      return fewest == most ? "" + most : fewest + " to " + most;
    }
  }

  /** Return it as a clause: "in 194 of 200 sampled assumptions; most depends on the load". */
  public String inWords() {
    if (counts.size() == 1 && counts.get(0).fewest() == samples) {
      return "in all " + samples + " sampled assumptions";
    }
    String which =
        counts.size() == 1
            ? "in " + counts.get(0).inWords()
            : counts.stream()
                .map(c -> c.verdict().word().replace('-', ' ') + " in " + c.inWords())
                .collect(Collectors.joining(", "));
    return which
        + " of "
        + samples
        + " sampled assumptions"
        + (decides.isBlank() ? "" : "; most depends on " + decides);
  }

  /**
   * Return the share of a verdict; nothing where no sample had a part in it.
   *
   * @param verdict the verdict
   * @param likely how the samples fall
   * @param deciding the sampled needs that can turn a verdict here
   */
  static Optional<SampleShare> of(Verdict verdict, Likely likely, List<String> deciding) {
    boolean open = verdict.kind() == VerdictKind.UNKNOWN;
    List<Map<VerdictKind, Integer>> groups =
        likely.groups().stream()
            .filter(group -> !open || group.agreed().isEmpty())
            .map(SampledGroup::kinds)
            .toList();
    if (groups.isEmpty() || deciding.isEmpty()) {
      return Optional.empty();
    }
    List<Count> counts = new ArrayList<>();
    for (VerdictKind kind : VerdictKind.values()) {
      List<Integer> found = groups.stream().map(group -> group.getOrDefault(kind, 0)).toList();
      if (open ? found.stream().anyMatch(n -> n > 0) : kind == verdict.kind()) {
        counts.add(new Count(kind, least(found), most(found)));
      }
    }
    return Optional.of(
        new SampleShare(samples(likely), counts, decides(likely.sampled(), deciding)));
  }

  private static int least(List<Integer> numbers) {
    return numbers.stream().mapToInt(Integer::intValue).min().orElseThrow();
  }

  private static int most(List<Integer> numbers) {
    return numbers.stream().mapToInt(Integer::intValue).max().orElseThrow();
  }

  private static int samples(Likely likely) {
    return likely.sampled().values().iterator().next().samples().size();
  }

  private static String decides(Map<String, Reading.Sampled> sampled, List<String> deciding) {
    Set<String> words = new LinkedHashSet<>();
    sampled.forEach(
        (need, reading) -> {
          if (deciding.contains(need) && !reading.decides().isBlank()) {
            words.add(reading.decides());
          }
        });
    return String.join(" and ", words);
  }
}
