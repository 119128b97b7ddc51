package org.bonewright.casefile.checking;

import org.bonewright.casefile.Film;

/** A film that is scored is scored for all four cortices. */
final class FilmScoresFourCortices implements Check {

  private static final int CORTICES = 4;

  @Override
  public void look(Contents contents, Objections objections) {
    Located.each(contents.file().findings(), At.FILE.field("findings"))
        .flatMap(finding -> Located.each(finding.value().films(), finding.at().field("films")))
        .forEach(film -> look(film, objections));
  }

  private static void look(Located<Film> film, Objections objections) {
    int scores = film.value().cortices().size();
    if (scores != 0 && scores != CORTICES) {
      objections.refuse(
          film.at().field("cortices"),
          Wording.count(scores, "score"),
          "one score for each of the four cortices, or none at all");
    }
  }
}
