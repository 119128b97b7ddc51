package org.bonewright.casefile.checking;

import java.util.List;
import java.util.stream.Stream;
import org.bonewright.casefile.Plan;

/** An acceptance is about an operation, a stage or a plan of the file. */
final class AcceptancesNameWhatExists implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    List<String> names =
        Stream.concat(
                contents.procedures().stream().map(procedure -> procedure.operation().id()),
                contents.file().plans().stream().map(Plan::id))
            .toList();
    Located.each(contents.file().accepted(), At.FILE.field("accepted"))
        .filter(acceptance -> !names.contains(acceptance.value().on()))
        .forEach(
            acceptance ->
                objections.refuse(
                    acceptance.at().field("on"),
                    acceptance.value().principle()
                        + " accepted on "
                        + acceptance.value().on()
                        + ", which the file does not have",
                    Wording.list(names, "no acceptance: the file has no operation and no plan")));
  }
}
