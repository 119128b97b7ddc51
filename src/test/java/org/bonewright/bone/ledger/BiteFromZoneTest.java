package org.bonewright.bone.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.bonewright.bone.BoneGrade;
import org.bonewright.bone.BoneShape;
import org.bonewright.bone.FractureZone;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseText;
import org.junit.jupiter.api.Test;

/** Where levels are told from the zone, they do not tell how thick the bone is. */
class BiteFromZoneTest {

  private static final CaseFile FILE =
      CaseText.of(
              """
              { schema: 'bonewright/case/1', reference: 'test', provenance: 'invented', patient: {},
                bone: {name: 'tibia', side: 'left',
                  sections: [{atMm: 50, outerMm: 40}, {atMm: 180, outerMm: 20}]},
                injury: {zone: {lengthMm: 4}},
                operations: [
                  {id: 'op-1', fixation: [{id: 'p', kind: 'plate', family: 'large-fragment-narrow',
                    surface: 'lateral', holes: 2, place: {zoneBetweenHoles: [1, 2]},
                    screws: [{at: [1, 2], type: 'cortical', cortices: 2}]}]},
                  {id: 'op-2', fixation: [{id: 'p', kind: 'plate', family: 'large-fragment-narrow',
                    surface: 'anterior', holes: 2, place: {zoneBetweenHoles: [1, 2]},
                    screws: [{at: [1, 2], type: 'cortical', cortices: 2}]}]}] }
              """)
          .file();

  @Test
  void a_screw_may_lie_where_the_bone_is_thinnest() {
    BoneShape bone = new BoneShape(FILE.bone(), Optional.empty(), EnumSet.of(BoneGrade.GOOD));
    Optional<FractureZone> zone = FILE.injury().zone().map(FractureZone::of);
    Ledger ledger =
        Ledger.of(
            List.of(
                new Step(FILE.operations().get(0), zone),
                new Step(FILE.operations().get(1), Optional.empty())),
            bone);

    // Same levels, a quarter of a turn apart, on a shaft of 20 mm less 10 %: the chord is
    // 18 sin 45° = 12.73 mm, from edge to edge 4.5 mm less.
    assertThat(ledger.isFromZone()).isTrue();
    assertThat(ledger.bites(1).get(0).clearance().orElseThrow().min())
        .isCloseTo(8.228, within(0.001));
  }
}
