package org.bonewright.measures.graft;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.measures.Measure;

/** The measures of graft, struts and shortening. */
public final class GraftMeasures {

  private GraftMeasures() {}

  /** Return each of them. */
  public static List<Measure> all() {
    List<Measure> all =
        new ArrayList<>(
            List.of(
                new BiologySteps(),
                new CancellousGraft(),
                new CompanionShortened(),
                new DefectAcross(),
                new DefectGraft(),
                new GraftBroughtIn(),
                new GraftMakeup(),
                new GraftVolumeShare(),
                new ResectionClosed(),
                new Shortening(),
                new SpacerAction(SpacerAction.Question.DAYS),
                new SpacerAction(SpacerAction.Question.GRAFTED),
                new SpacerAction(SpacerAction.Question.HELD),
                new SpacerAction(SpacerAction.Question.USED),
                new StrippedAtStrut(),
                new StructuralGraftStage(),
                new TransportDepartures(),
                new TransportUsed()));
    all.addAll(StrutMeasures.all());
    return List.copyOf(all);
  }
}
