package org.bonewright.page;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.casefile.CaseFile;
import org.bonewright.drawing.Drawing;
import org.bonewright.drawing.SvgWriter;
import org.bonewright.drawing.View;
import org.bonewright.measures.MeasureCatalogue;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.catalogue.EveryMeasure;
import org.bonewright.report.html.Figure;
import org.bonewright.report.html.HtmlReport;
import org.bonewright.review.Review;

/**
 * The page of a case for a meeting: each operation from the side, each plan from the side and with
 * its surface unrolled, and the review.
 */
public final class ReviewPage {

  private ReviewPage() {}

  /** Return the page, one HTML file that needs nothing else. */
  public static String render(CaseFile caseFile, Review review) {
    MeasureCatalogue catalogue = EveryMeasure.catalogue();
    List<Figure> figures = new ArrayList<>();
    for (Subject subject : Subject.of(caseFile)) {
      if (subject.scope() == Subject.Scope.STAGE) {
        continue;
      }
      Scene scene = new Scene(subject, catalogue);
      figures.add(figure(scene, View.STRIP, subject.id() + ", from the side"));
      if (subject.scope() == Subject.Scope.PLAN) {
        figures.add(figure(scene, View.MAP, subject.id() + ", surface unrolled"));
      }
    }
    return new HtmlReport(figures).render(review);
  }

  private static Figure figure(Scene scene, View view, String caption) {
    return new Figure(caption, SvgWriter.write(Drawing.of(scene, view)));
  }
}
