package org.bonewright.drawing;

import java.io.StringWriter;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.bonewright.measures.Words;

/**
 * Writes a picture as SVG 1.1 that needs no style sheet, script or font of its own. The same
 * picture gives the same bytes.
 */
public final class SvgWriter {

  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final XMLOutputFactory FACTORY = XMLOutputFactory.newDefaultFactory();

  private final StringWriter text = new StringWriter();
  private final XMLStreamWriter xml;
  private final Picture picture;
  private int windows;

  private SvgWriter(Picture picture) throws XMLStreamException {
    this.picture = picture;
    this.xml = FACTORY.createXMLStreamWriter(text);
  }

  /** Return the picture as the text of an SVG file. */
  public static String write(Picture picture) {
    try {
      return new SvgWriter(picture).whole();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("not to be written as XML: " + picture.title(), e);
    }
  }

  private String whole() throws XMLStreamException {
    xml.writeStartDocument("UTF-8", "1.0");
    newLine();
    xml.setDefaultNamespace(SVG);
    xml.writeStartElement(SVG, "svg");
    xml.writeDefaultNamespace(SVG);
    put("role", "img");
    put("aria-labelledby", picture.id() + "-title " + picture.id() + "-desc");
    put("viewBox", "0 0 " + number(picture.width()) + " " + number(picture.height()));
    put("width", number(picture.width()));
    put("height", number(picture.height()));
    put("font-family", "DejaVu Sans, Verdana, Arial, sans-serif");
    words("title", picture.id() + "-title", picture.title());
    words("desc", picture.id() + "-desc", picture.description());
    patterns();
    newLine();
    mark(
        new Mark.Box(0, 0, picture.width(), picture.height(), Ink.SMOOTH.withoutStroke("#ffffff")));
    for (Mark mark : picture.marks()) {
      newLine();
      mark(mark);
    }
    newLine();
    xml.writeEndElement();
    xml.writeEndDocument();
    xml.flush();
    return text + "\n";
  }

  private void words(String element, String id, String content) throws XMLStreamException {
    newLine();
    xml.writeStartElement(SVG, element);
    put("id", id);
    xml.writeCharacters(readable(content));
    xml.writeEndElement();
  }

  private void patterns() throws XMLStreamException {
    Set<Hatched> used =
        picture.marks().stream()
            .flatMap(mark -> inks(mark).stream())
            .flatMap(ink -> ink.hatch().map(hatch -> new Hatched(hatch, ink)).stream())
            .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
    Set<Hatch> done = EnumSet.noneOf(Hatch.class);
    for (Hatched one : used) {
      if (done.add(one.hatch())) {
        pattern(one.hatch(), one.ink());
      }
    }
  }

  /** A hatch with the ink that it is drawn in. */
  private record Hatched(Hatch hatch, Ink ink) {}

  private static List<Ink> inks(Mark mark) {
    if (mark instanceof Mark.Thing thing) {
      return thing.marks().stream().flatMap(part -> inks(part).stream()).toList();
    }
    if (mark instanceof Mark.Window window) {
      return window.marks().stream().flatMap(part -> inks(part).stream()).toList();
    }
    if (mark instanceof Mark.Box box) {
      return List.of(box.ink());
    }
    if (mark instanceof Mark.Outline outline) {
      return List.of(outline.ink());
    }
    return mark instanceof Mark.Disc disc ? List.of(disc.ink()) : List.of();
  }

  private void pattern(Hatch hatch, Ink ink) throws XMLStreamException {
    newLine();
    xml.writeStartElement(SVG, "pattern");
    put("id", id(hatch));
    put("patternUnits", "userSpaceOnUse");
    put("width", number(hatch.width));
    put("height", number(hatch.height));
    if (!ink.fill().equals("none")) {
      xml.writeEmptyElement(SVG, "rect");
      put("width", number(hatch.width));
      put("height", number(hatch.height));
      put("fill", ink.fill());
    }
    xml.writeEmptyElement(SVG, "path");
    put("d", hatch.path);
    put("fill", "none");
    put("stroke", ink.stroke());
    put("stroke-width", number(hatch.line));
    xml.writeEndElement();
  }

  private String id(Hatch hatch) {
    return picture.id() + "-" + Words.written(hatch);
  }

  private void mark(Mark mark) throws XMLStreamException {
    if (mark instanceof Mark.Thing thing) {
      thing(thing);
    } else if (mark instanceof Mark.Window window) {
      window(window);
    } else if (mark instanceof Mark.Box box) {
      xml.writeEmptyElement(SVG, "rect");
      put("x", number(box.x()));
      put("y", number(box.y()));
      put("width", number(box.width()));
      put("height", number(box.height()));
      ink(box.ink());
    } else if (mark instanceof Mark.Disc disc) {
      xml.writeEmptyElement(SVG, "ellipse");
      put("cx", number(disc.x()));
      put("cy", number(disc.y()));
      put("rx", number(disc.rx()));
      put("ry", number(disc.ry()));
      ink(disc.ink());
    } else if (mark instanceof Mark.Outline outline) {
      xml.writeEmptyElement(SVG, outline.closed() ? "polygon" : "polyline");
      put(
          "points",
          outline.points().stream()
              .map(point -> number(point.x()) + "," + number(point.y()))
              .collect(Collectors.joining(" ")));
      ink(outline.closed() ? outline.ink() : outline.ink().withoutFill());
    } else if (mark instanceof Mark.Label label) {
      label(label);
    }
  }

  private void thing(Mark.Thing thing) throws XMLStreamException {
    xml.writeStartElement(SVG, "g");
    put("data-kind", thing.kind());
    if (!thing.name().isEmpty()) {
      put("data-name", thing.name());
    }
    xml.writeStartElement(SVG, "title");
    xml.writeCharacters(readable(thing.says()));
    xml.writeEndElement();
    for (Mark part : thing.marks()) {
      mark(part);
    }
    xml.writeEndElement();
  }

  private void window(Mark.Window window) throws XMLStreamException {
    windows++;
    String id = picture.id() + "-window-" + windows;
    xml.writeStartElement(SVG, "clipPath");
    put("id", id);
    xml.writeEmptyElement(SVG, "rect");
    put("x", number(window.x()));
    put("y", number(window.y()));
    put("width", number(window.width()));
    put("height", number(window.height()));
    xml.writeEndElement();
    xml.writeStartElement(SVG, "g");
    put("clip-path", "url(#" + id + ")");
    for (Mark part : window.marks()) {
      newLine();
      mark(part);
    }
    xml.writeEndElement();
  }

  private void label(Mark.Label label) throws XMLStreamException {
    xml.writeStartElement(SVG, "text");
    put("x", number(label.x()));
    put("y", number(label.y()));
    put("font-size", number(label.size()));
    if (label.anchor() != Mark.Anchor.START) {
      put("text-anchor", Words.written(label.anchor()));
    }
    if (label.bold()) {
      put("font-weight", "bold");
    }
    put("fill", "#1a1a1a");
    xml.writeCharacters(readable(label.text()));
    xml.writeEndElement();
  }

  private void ink(Ink ink) throws XMLStreamException {
    put("fill", ink.hatch().map(hatch -> "url(#" + id(hatch) + ")").orElse(ink.fill()));
    put("stroke", ink.stroke());
    if (!ink.stroke().equals("none")) {
      put("stroke-width", number(ink.width()));
      if (!ink.dash().isEmpty()) {
        put("stroke-dasharray", ink.dash());
      }
    }
  }

  private void put(String attribute, String value) throws XMLStreamException {
    xml.writeAttribute(attribute, value);
  }

  private void newLine() throws XMLStreamException {
    xml.writeCharacters("\n");
  }

  /** Return the text without the characters that XML 1.0 forbids. */
  private static String readable(String content) {
    return content
        .codePoints()
        .filter(c -> c >= 0x20 && c != 0xFFFE && c != 0xFFFF && (c < 0xD800 || c > 0xDFFF))
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  /** Return a number with two decimals at the most. */
  private static String number(double value) {
    double rounded = Math.rint(value * 100) / 100;
    if (rounded == Math.rint(rounded)) {
      return Long.toString((long) rounded);
    }
    return String.format(Locale.ROOT, "%.2f", rounded);
  }
}
