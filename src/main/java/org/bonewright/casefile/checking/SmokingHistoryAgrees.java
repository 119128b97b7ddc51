package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Host;
import org.bonewright.casefile.Host.Smoking;
import org.bonewright.casefile.Quantity;

/**
 * A day on which smoking stopped goes only with having smoked and having stopped by then. Somebody
 * who smokes again may have stopped before.
 */
final class SmokingHistoryAgrees implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    Located.each(contents.file().findings(), At.FILE.field("findings"))
        .forEach(finding -> look(finding, objections));
  }

  private static void look(Located<Finding> finding, Objections objections) {
    Optional<Host> host = finding.value().host();
    Optional<Quantity> stopped = host.flatMap(Host::smokingStoppedDay);
    Optional<Smoking> smoking = host.flatMap(Host::smoking);
    if (stopped.isEmpty() || smoking.isEmpty()) {
      return;
    }
    String contradiction = contradiction(smoking.get(), stopped.get(), finding.value().day());
    if (!contradiction.isEmpty()) {
      objections.refuse(
          finding.at().field("host").field("smokingStoppedDay"),
          Wording.day(stopped.get()) + " as the end of smoking, for " + contradiction,
          "such a day only for a patient who smoked, and none after the day of the finding");
    }
  }

  private static String contradiction(Smoking smoking, Quantity stopped, Quantity seen) {
    if (smoking == Smoking.NEVER) {
      return "a patient who never smoked";
    }
    if (smoking == Smoking.STOPPED && Certainly.below(seen, stopped)) {
      return "a patient who had stopped by " + Wording.day(seen);
    }
    return "";
  }
}
