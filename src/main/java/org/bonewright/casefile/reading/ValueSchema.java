package org.bonewright.casefile.reading;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.OneOrMany;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Written;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Says in JSON Schema what the value of one record component must look like. */
final class ValueSchema {

  private static final JsonMapper MAPPER = JsonMapper.shared();

  private final NumberShape.Limits limits;
  private final Optional<Written> written;
  private final Function<Class<?>, ObjectNode> reference;

  private ValueSchema(RecordComponent component, Function<Class<?>, ObjectNode> reference) {
    this.limits =
        NumberShape.Limits.of(Optional.ofNullable(component.getAnnotation(Between.class)));
    this.written = Optional.ofNullable(component.getAnnotation(Written.class));
    this.reference = reference;
  }

  /**
   * Return the schema of a component's value.
   *
   * @param reference gives, for a record or sealed interface, a reference to its definition
   */
  static ObjectNode of(RecordComponent component, Function<Class<?>, ObjectNode> reference) {
    ObjectNode schema = new ValueSchema(component, reference).of(component.getGenericType());
    OneOrMany oneOrMany = component.getAnnotation(OneOrMany.class);
    return oneOrMany == null ? schema : oneOrMany(schema, oneOrMany.word());
  }

  /** Let a list be written as its only element, or as a word. */
  private static ObjectNode oneOrMany(ObjectNode list, String word) {
    ObjectNode schema = anyOf(list, (ObjectNode) list.get("items").deepCopy());
    if (!word.isEmpty()) {
      schema.withArrayProperty("anyOf").addObject().put("const", word);
    }
    return schema;
  }

  /** Return whether a type has a definition of its own, to which its uses refer. */
  static boolean isReferred(Class<?> type) {
    boolean isComposed = type.isRecord() || type.isSealed();
    return isComposed && type != Quantity.class && type != Direction.class && !type.isEnum();
  }

  private ObjectNode of(Type type) {
    if (type instanceof ParameterizedType generic) {
      ObjectNode inner = of(generic.getActualTypeArguments()[0]);
      return generic.getRawType() == Optional.class ? orNull(inner) : list(inner);
    }
    Class<?> plain = (Class<?>) type;
    if (plain == String.class) {
      return text();
    }
    if (plain == boolean.class || plain == Boolean.class) {
      return typed("boolean");
    }
    if (plain == int.class || plain == Integer.class) {
      return number("integer", limits.forWhole());
    }
    if (plain == double.class || plain == Double.class) {
      return number("number", limits);
    }
    if (plain == Quantity.class) {
      return quantity();
    }
    if (plain == Direction.class) {
      return direction();
    }
    return isReferred(plain) ? reference.apply(plain) : words(plain);
  }

  private static ObjectNode orNull(ObjectNode inner) {
    ObjectNode schema = inner.has("anyOf") ? inner : anyOf(inner);
    schema.withArrayProperty("anyOf").add(typed("null"));
    return schema;
  }

  private static ObjectNode list(ObjectNode inner) {
    ObjectNode schema = typed("array").put("maxItems", ListShape.LONGEST);
    schema.set("items", inner);
    return schema;
  }

  private ObjectNode text() {
    return typed("string")
        .put("minLength", 1)
        .put("maxLength", TextShape.LONGEST)
        .put("pattern", "^(?:" + TextShape.pattern(written) + ")$");
  }

  private ObjectNode quantity() {
    ObjectNode range = typed("object");
    range.putObject("properties").set("min", number("number", limits));
    range.withObjectProperty("properties").set("max", number("number", limits));
    range.putArray("required").add("min").add("max");
    range.put("additionalProperties", false);
    return anyOf(number("number", limits), range);
  }

  private static ObjectNode direction() {
    ObjectNode degrees = typed("number").put("minimum", 0).put("exclusiveMaximum", 360);
    return anyOf(degrees, words(Direction.Named.class));
  }

  private static ObjectNode words(Class<?> type) {
    ObjectNode schema = typed("string");
    WordShape.of(type).words().keySet().forEach(schema.putArray("enum")::add);
    return schema;
  }

  private static ObjectNode number(String type, NumberShape.Limits limits) {
    ObjectNode schema = typed(type);
    putFinite(schema, "minimum", limits.min());
    putFinite(schema, "maximum", limits.max());
    return schema;
  }

  private static void putFinite(ObjectNode schema, String keyword, double limit) {
    if (Double.isFinite(limit)) {
      schema.put(keyword, new BigDecimal(NumberShape.Limits.plain(limit)));
    }
  }

  private static ObjectNode typed(String type) {
    return MAPPER.createObjectNode().put("type", type);
  }

  private static ObjectNode anyOf(ObjectNode... choices) {
    ObjectNode schema = MAPPER.createObjectNode();
    for (ObjectNode choice : choices) {
      schema.withArrayProperty("anyOf").add(choice);
    }
    return schema;
  }
}
