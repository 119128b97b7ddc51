package org.bonewright.measures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bonewright.casefile.CaseFile;

/** What must hold for every reading of every measure of any case. */
public final class Sound {

  private Sound() {}

  /** Take every measure of every subject, twice, and check each reading. */
  public static void check(CaseFile file) {
    for (Subject subject : Subject.of(file)) {
      Scene scene = new Scene(subject, Taken.CATALOGUE);
      List<Definition> definitions = Taken.CATALOGUE.definitions();
      for (int i = 0; i < definitions.size(); i++) {
        Definition definition = definitions.get(i);
        Reading reading = scene.read(definition.id());
        String where = definition.id() + " of " + subject.id();
        withinDomain(reading, definition.domain(), where);
        explained(reading, where);
        assertThat(Taken.reading(definition.id(), subject)).as(where).isEqualTo(reading);
      }
    }
  }

  private static void withinDomain(Reading reading, Definition.Domain domain, String where) {
    if (reading instanceof Reading.Word word) {
      assertThat(domain).as(where).isInstanceOf(Definition.Domain.Words.class);
      assertThat(((Definition.Domain.Words) domain).words()).as(where).containsAll(word.possible());
    }
    if (reading instanceof Reading.Amount amount) {
      assertThat(domain).as(where).isInstanceOf(Definition.Domain.Numbers.class);
      within(amount, (Definition.Domain.Numbers) domain, where);
    }
    if (reading instanceof Reading.Sampled sampled) {
      assertThat(domain).as(where).isInstanceOf(Definition.Domain.Numbers.class);
      Definition.Domain.Numbers numbers = (Definition.Domain.Numbers) domain;
      assertThat(sampled.samples())
          .as(where)
          .allSatisfy(one -> assertThat(one).isBetween(numbers.min(), numbers.max()));
    }
  }

  private static void within(
      Reading.Amount amount, Definition.Domain.Numbers numbers, String where) {
    assertThat(amount.min()).as(where).isBetween(numbers.min(), numbers.max());
    assertThat(amount.max()).as(where).isBetween(numbers.min(), numbers.max());
    if (numbers.step() > 0) {
      assertThat(amount.min() / numbers.step()).as(where).isEqualTo(steps(amount.min(), numbers));
      assertThat(amount.max() / numbers.step()).as(where).isEqualTo(steps(amount.max(), numbers));
    }
  }

  private static double steps(double value, Definition.Domain.Numbers numbers) {
    return Math.rint(value / numbers.step());
  }

  /** What is not exact says what would make it so; what does not exist says why. */
  private static void explained(Reading reading, String where) {
    if (!exact(reading)) {
      assertThat(reading.missing())
          .as("%s: %s", where, reading)
          .isNotEmpty()
          .doesNotHaveDuplicates();
      assertThat(reading.missing())
          .as(where)
          .allSatisfy(
              fact -> {
                assertThat(fact.field()).isNotBlank();
                assertThat(fact.question()).contains("?").matches("[A-Z].*");
              });
    }
    if (reading instanceof Reading.Sampled sampled) {
      assertThat(sampled.decides()).as(where).isNotBlank();
      assertThat(sampled.missing()).as(where).doesNotHaveDuplicates();
    }
    if (reading instanceof Reading.None none) {
      assertThat(none.why()).as(where).isNotBlank();
    }
  }

  private static boolean exact(Reading reading) {
    return reading instanceof Reading.None
        || reading instanceof Reading.Sampled // its assumptions may be beyond any file
        || (reading instanceof Reading.Amount amount
            && (amount.min() == amount.max() || amount.kind() == Kind.MODEL))
        || (reading instanceof Reading.Word word
            && (word.possible().size() == 1 || word.kind() == Kind.MODEL));
  }
}
