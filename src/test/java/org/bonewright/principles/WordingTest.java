package org.bonewright.principles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bonewright.casefile.CaseText;
import org.junit.jupiter.api.Test;

/** How a verdict is put into words. */
class WordingTest {

  @Test
  void what_stands_whole_in_another_sentence_is_not_said_twice() throws IOException {
    CaseText text =
        CaseText.of(Files.readString(Path.of("cases/faults/humerus-false-joint-three-plans.json")));
    JudgedCase judged = new Judge(AllCells.RULES).judge(text.file());
    Judgement palsy =
        judged.subjects().stream()
            .filter(subject -> subject.id().equals("plan-a"))
            .flatMap(subject -> judged.of(subject).stream())
            .filter(judgement -> judgement.card().id().equals("nerve-palsy-follow-up"))
            .findFirst()
            .orElseThrow();
    assertThat(new Wording(AllCells.RULES).of(palsy))
        .isEqualTo(
            "A new palsy, with 3 of examination, electrical test and exploration without a date.");
  }
}
