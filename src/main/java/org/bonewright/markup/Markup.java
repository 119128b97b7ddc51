package org.bonewright.markup;

import java.io.StringWriter;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes HTML in the syntax of XML, so that no text of a case or a card can become markup. */
public final class Markup {

  private final StringWriter text = new StringWriter();
  private final XMLStreamWriter out;

  /** Begin with nothing written. */
  public Markup() {
    try {
      out = XMLOutputFactory.newFactory().createXMLStreamWriter(text);
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Write to the end of an element what the content writes. */
  public Markup in(String element, String classes, Runnable content) {
    open(element, "class", classes);
    content.run();
    return close();
  }

  /** Write to the end of an element what the content writes. */
  public Markup in(String element, Runnable content) {
    open(element);
    content.run();
    return close();
  }

  /**
   * Write what may be wider than the window, and scrolls sideways by mouse and keyboard.
   *
   * @param label what it is, for those who do not see it
   */
  public Markup wide(String label, Runnable content) {
    open("div", "class", "wide", "tabindex", "0", "role", "region", "aria-label", label);
    content.run();
    return close();
  }

  /**
   * Write a table that may be wider than the window.
   *
   * @param label what it is, for those who do not see it
   * @param first the head of the first column
   * @param columns the heads of the others
   * @param rows writes the rows
   */
  public Markup wideTable(String label, String first, List<String> columns, Runnable rows) {
    return wide(
        label,
        () -> {
          open("table");
          in("thead", () -> in("tr", () -> heads(first, columns)));
          in("tbody", rows);
          close();
        });
  }

  private void heads(String first, List<String> columns) {
    open("th", "scope", "col").words(first).close();
    columns.forEach(column -> open("th", "scope", "col").words(column).close());
  }

  /** Begin an element; attributes are given by name and value, in turn. */
  public Markup open(String element, String... attributes) {
    try {
      out.writeStartElement(element);
      for (int i = 0; i < attributes.length; i += 2) {
        out.writeAttribute(attributes[i], attributes[i + 1]);
      }
      return this;
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  /** End the element begun last. */
  public Markup close() {
    try {
      out.writeEndElement();
      return this;
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Write an element that holds a text and nothing else. */
  public Markup say(String element, String words) {
    return open(element).words(words).close();
  }

  /** Write an element of a class that holds a text and nothing else. */
  public Markup say(String element, String classes, String words) {
    return open(element, "class", classes).words(words).close();
  }

  /** Write a list with one text an entry; nothing where there is none. */
  public Markup list(String element, List<String> entries) {
    if (!entries.isEmpty()) {
      in(element, () -> entries.forEach(entry -> say("li", entry)));
    }
    return this;
  }

  /** Write a text. */
  public Markup words(String words) {
    try {
      out.writeCharacters(words);
      return this;
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Write markup that our own writers made, as it is. */
  public Markup made(String markup) {
    words("");
    try {
      out.flush();
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
    text.append(markup);
    return this;
  }

  /** Return everything written. */
  public String text() {
    try {
      out.flush();
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
    return text.toString();
  }
}
