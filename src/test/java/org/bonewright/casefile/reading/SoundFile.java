package org.bonewright.casefile.reading;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Written;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes a sound file for any record: every component, every alternative and both ways of giving a
 * quantity occur in it.
 */
final class SoundFile {

  /** Texts of which every prescribed form must accept one. */
  private static final List<String> TEXTS =
      List.of("Some words", "a-1", "abc", "op-1/plate-1", "bonewright/case/1", "A1", "1", "2.0.0");

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private final Deque<Class<?>> inside = new ArrayDeque<>();
  private boolean exact;

  private SoundFile() {}

  /** Return a sound file. */
  static ObjectNode of(Class<?> type) {
    return new SoundFile().group(type);
  }

  /** Return a sound file as indented text. */
  static String text(Class<?> type) {
    return JsonMapper.shared().writerWithDefaultPrettyPrinter().writeValueAsString(of(type));
  }

  private ObjectNode group(Class<?> type) {
    inside.push(type);
    ObjectNode group = JSON.objectNode();
    Shapes.kind(type).ifPresent(kind -> group.put("kind", kind));
    for (RecordComponent component : type.getRecordComponents()) {
      if (!inside.contains(core(component.getGenericType()))) {
        group.set(component.getName(), value(component.getGenericType(), component));
      }
    }
    inside.pop();
    return group;
  }

  private static Type core(Type type) {
    return type instanceof ParameterizedType generic
        ? core(generic.getActualTypeArguments()[0])
        : type;
  }

  private JsonNode value(Type type, RecordComponent component) {
    if (type instanceof ParameterizedType generic) {
      Type inner = generic.getActualTypeArguments()[0];
      return generic.getRawType() == Optional.class
          ? value(inner, component)
          : list(inner, component);
    }
    Class<?> plain = (Class<?>) type;
    if (plain == String.class) {
      return JSON.stringNode(text(component.getAnnotation(Written.class)));
    }
    if (plain == boolean.class || plain == Boolean.class) {
      return JSON.booleanNode(true);
    }
    if (plain == int.class || plain == Integer.class) {
      return JSON.numberNode((int) Math.ceil(least(component)));
    }
    if (plain == double.class || plain == Double.class) {
      return JSON.numberNode(most(component));
    }
    if (plain == Quantity.class) {
      return quantity(component);
    }
    if (plain == Direction.class) {
      exact = !exact;
      return exact ? JSON.numberNode(359.5) : JSON.stringNode("posterolateral");
    }
    if (plain.isEnum()) {
      return JSON.stringNode(WordShape.of(plain).words().keySet().iterator().next());
    }
    return group(plain.isRecord() ? plain : Shapes.alternatives(plain).get(0));
  }

  private ArrayNode list(Type inner, RecordComponent component) {
    ArrayNode list = JSON.arrayNode();
    if (inner instanceof Class<?> choice && choice.isSealed() && !choice.isEnum()) {
      Shapes.alternatives(choice).forEach(type -> list.add(group(type)));
    } else {
      list.add(value(inner, component)).add(value(inner, component));
    }
    return list;
  }

  private JsonNode quantity(RecordComponent component) {
    exact = !exact;
    return exact
        ? JSON.numberNode(least(component))
        : JSON.objectNode().put("min", least(component)).put("max", most(component));
  }

  private static String text(Written written) {
    String form = written == null ? ".*" : written.regex();
    return TEXTS.stream()
        .filter(text -> text.matches(form))
        .findFirst()
        .orElseThrow(() -> new AssertionError("add a text for " + form + " to SoundFile.TEXTS"));
  }

  private static double least(RecordComponent component) {
    Between between = component.getAnnotation(Between.class);
    return between == null ? 1 : between.min();
  }

  private static double most(RecordComponent component) {
    Between between = component.getAnnotation(Between.class);
    return between == null ? 1 : between.max();
  }
}
