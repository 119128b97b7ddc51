package org.bonewright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Plan;
import org.bonewright.measures.Subject;
import org.bonewright.principles.Card;
import org.bonewright.principles.JudgedCase;
import org.bonewright.principles.Judgement;
import org.bonewright.principles.RuleSet;
import org.bonewright.principles.VerdictKind;

/** Makes the table of principles against operations. */
final class TableMaker {

  private TableMaker() {}

  static PrincipleTable table(JudgedCase judged, RuleSet rules, LocalMaker local) {
    List<Subject> operations =
        judged.subjects().stream().filter(subject -> !subject.planned()).toList();
    List<String> columns = new ArrayList<>(operations.stream().map(Subject::id).toList());
    judged.caseFile().plans().forEach(plan -> columns.add(plan.id()));
    List<PrincipleTable.Row> rows = new ArrayList<>();
    for (Card card : rules.cards()) {
      List<PrincipleTable.Cell> cells = new ArrayList<>();
      operations.forEach(subject -> cells.add(cell(judged.of(subject, card.id()), local)));
      for (Plan plan : judged.caseFile().plans()) {
        cells.add(cell(new PlanVerdicts(judged, plan).worst(card.id()), local));
      }
      rows.add(
          new PrincipleTable.Row(
              card.id(), card.title(), rules.family(card).letter(), List.copyOf(cells)));
    }
    return new PrincipleTable(List.copyOf(columns), List.copyOf(rows));
  }

  private static PrincipleTable.Cell cell(Optional<Judgement> judgement, LocalMaker local) {
    return judgement
        .map(j -> new PrincipleTable.Cell(j.verdict().kind(), j.severity(), local.note(j)))
        .orElse(
            new PrincipleTable.Cell(
                VerdictKind.NOT_APPLICABLE, Optional.empty(), Optional.empty()));
  }
}
