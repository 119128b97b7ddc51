package org.bonewright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Subject;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** What must hold for the drawings of every subject of every case in the repository. */
class EveryDrawingTest {

  private static final List<CaseDrawings.Drawn> ALL = CaseDrawings.all().toList();

  private interface Check {
    void of(CaseDrawings.Drawn drawn) throws Exception;
  }

  private static Stream<DynamicTest> each(Check check) {
    return ALL.stream()
        .map(drawn -> DynamicTest.dynamicTest(drawn.toString(), () -> check.of(drawn)));
  }

  private static Element svg(CaseDrawings.Drawn drawn) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
    factory.setNamespaceAware(true);
    byte[] bytes = SvgWriter.write(drawn.picture()).getBytes(StandardCharsets.UTF_8);
    Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
    return document.getDocumentElement();
  }

  @TestFactory
  Stream<DynamicTest> is_well_formed_and_says_in_words_what_it_shows() {
    return each(
        drawn -> {
          Element svg = svg(drawn);
          assertThat(svg.getLocalName()).isEqualTo("svg");
          assertThat(svg.getAttribute("role")).isEqualTo("img");
          String[] named = svg.getAttribute("aria-labelledby").split(" ");
          Element title = (Element) svg.getElementsByTagName("title").item(0);
          Element desc = (Element) svg.getElementsByTagName("desc").item(0);
          assertThat(named)
              .containsExactly(title.getAttribute("id"), desc.getAttribute("id"))
              .doesNotHaveDuplicates();
          assertThat(title.getTextContent()).contains(drawn.subject().id());
          assertThat(desc.getTextContent()).contains("levels in mm from");
          for (Implant implant : last(drawn.subject()).fixation().orElse(List.of())) {
            assertThat(desc.getTextContent()).contains("/" + implant.id());
          }
        });
  }

  private static Operation last(Subject subject) {
    return subject.operation();
  }

  @TestFactory
  Stream<DynamicTest> no_two_labels_overlap_and_none_leaves_the_sheet() {
    return each(
        drawn -> {
          List<Mark.Label> labels = CaseDrawings.marks(drawn.picture(), Mark.Label.class);
          assertThat(labels).isNotEmpty();
          for (int i = 0; i < labels.size(); i++) {
            TextBox box = TextBox.of(labels.get(i));
            assertThat(box.within(0, 0, drawn.picture().width(), drawn.picture().height()))
                .as(labels.get(i).text())
                .isTrue();
            for (int j = i + 1; j < labels.size(); j++) {
              assertThat(box.overlaps(TextBox.of(labels.get(j))))
                  .as("%s over %s", labels.get(i), labels.get(j))
                  .isFalse();
            }
          }
        });
  }

  @TestFactory
  Stream<DynamicTest> is_legible_no_text_is_smaller_than_nine_units() {
    return each(
        drawn ->
            assertThat(CaseDrawings.marks(drawn.picture(), Mark.Label.class))
                .allMatch(label -> label.size() >= 9));
  }

  @TestFactory
  Stream<DynamicTest> every_shape_stays_on_the_sheet() {
    return each(
        drawn -> {
          Bounds bounds = Bounds.of(drawn.picture().marks(), 0);
          assertThat(bounds.top()).isGreaterThanOrEqualTo(0);
          assertThat(bounds.bottom()).isLessThanOrEqualTo(drawn.picture().height());
          CaseDrawings.marks(drawn.picture(), Mark.Outline.class).stream()
              .flatMap(outline -> outline.points().stream())
              .forEach(point -> assertThat(point.x()).isBetween(0.0, drawn.picture().width()));
        });
  }

  @TestFactory
  Stream<DynamicTest> every_hole_screw_bolt_and_pin_stands_once() {
    return each(
        drawn -> {
          List<String> expected = expected(drawn.subject());
          List<String> found =
              CaseDrawings.marks(drawn.picture(), Mark.Thing.class).stream()
                  .filter(thing -> !thing.name().isEmpty())
                  .map(
                      thing ->
                          thing.kind().replace("locking-plate-", "").replace("plate-", "")
                              + " "
                              + thing.name())
                  .filter(expected::contains)
                  .toList();
          List<String> placed = expected.stream().filter(name -> hasPlace(drawn, name)).toList();
          assertThat(found).containsExactlyInAnyOrderElementsOf(placed);
          String said = drawn.picture().description();
          String notDrawn =
              said.substring(Math.max(0, said.indexOf("Not drawn, level not known:")));
          expected.stream()
              .filter(name -> !placed.contains(name) && !name.startsWith("hole "))
              .forEach(
                  name -> assertThat(notDrawn).contains(name.substring(name.indexOf(' ') + 1)));
        });
  }

  /**
   * A bolt without a level has no place; nor have, on the map, the holes of a plate whose surface
   * is not recorded.
   */
  private static boolean hasPlace(CaseDrawings.Drawn drawn, String name) {
    boolean lostBolt =
        last(drawn.subject()).fixation().orElse(List.of()).stream()
            .filter(Nail.class::isInstance)
            .map(Nail.class::cast)
            .filter(nail -> name.contains("/" + nail.id() + " bolt "))
            .map(nail -> nail.bolts().orElseThrow().get(lastNumber(name) - 1))
            .anyMatch(bolt -> bolt.atMm().isEmpty());
    boolean lostLagScrew =
        last(drawn.subject()).fixation().orElse(List.of()).stream()
            .filter(LagScrew.class::isInstance)
            .map(LagScrew.class::cast)
            .filter(lag -> name.startsWith("lag-screw ") && name.endsWith("/" + lag.id()))
            .anyMatch(lag -> lag.atMm().isEmpty() && lag.throughPlate().isEmpty());
    return !lostBolt && !lostLagScrew && hasSurface(drawn, name);
  }

  private static int lastNumber(String name) {
    return Integer.parseInt(name.substring(name.lastIndexOf(' ') + 1));
  }

  private static boolean hasSurface(CaseDrawings.Drawn drawn, String name) {
    return drawn.view() == View.STRIP
        || !name.startsWith("hole ")
        || last(drawn.subject()).fixation().orElse(List.of()).stream()
            .filter(Plate.class::isInstance)
            .map(Plate.class::cast)
            .filter(plate -> name.contains("/" + plate.id() + " "))
            .anyMatch(plate -> plate.surface().isPresent());
  }

  private static List<String> expected(Subject subject) {
    Operation operation = last(subject);
    List<String> names = new ArrayList<>();
    for (Implant implant : operation.fixation().orElse(List.of())) {
      String path = operation.id() + "/" + implant.id();
      if (implant instanceof Plate plate) {
        IntStream.rangeClosed(1, plate.holes().orElse(0))
            .forEach(hole -> names.add("hole " + path + " hole " + hole));
        plate.screws().orElse(List.of()).stream()
            .flatMap(row -> row.at().stream())
            .forEach(hole -> names.add("screw " + path + " hole " + hole));
      } else if (implant instanceof Nail nail) {
        IntStream.rangeClosed(1, nail.bolts().orElse(List.of()).size())
            .forEach(bolt -> names.add("bolt " + path + " bolt " + bolt));
      } else if (implant instanceof ExternalFixator fixator) {
        IntStream.rangeClosed(1, fixator.pins().orElse(List.of()).size())
            .forEach(pin -> names.add("pin " + path + " pin " + pin));
      } else if (implant instanceof LagScrew) {
        names.add("lag-screw " + path);
      }
    }
    return names;
  }
}
