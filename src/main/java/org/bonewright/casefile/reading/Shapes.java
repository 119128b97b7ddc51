package org.bonewright.casefile.reading;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Kind;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Named;
import org.bonewright.casefile.OneOrMany;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Written;

/**
 * Makes the shape of a record from its components, by reflection, once.
 *
 * <p>A component may be a {@code String}, {@code boolean}, {@code int}, {@code double}, an enum, a
 * {@link Quantity}, a {@link Direction}, a record, a sealed interface of records that carry a
 * {@link Kind}, a {@code List} of these, or an {@code Optional} of any of these. Anything else is a
 * mistake in the program.
 */
final class Shapes {

  /** The field with which editors find the schema; allowed in the outermost group, and ignored. */
  static final String SCHEMA = "$schema";

  private final Map<Class<?>, Shape> known = new HashMap<>();

  private Shapes() {}

  /** Return the shape of a whole file. */
  static Shape ofFile(Class<?> type) {
    Shapes shapes = new Shapes();
    Shape shape = shapes.composed(type);
    List<Class<?>> files = type.isSealed() ? alternatives(type) : List.of(type);
    for (Class<?> file : files) {
      if (shapes.composed(file) instanceof RecordShape record) {
        record.add(
            new Component(
                SCHEMA, new AnyShape(), Component.Presence.OPTIONAL, Optional.empty(), SCHEMA));
      }
    }
    return shape;
  }

  /**
   * Return the alternatives of a sealed interface, those of sealed interfaces below it included.
   */
  static List<Class<?>> alternatives(Class<?> choice) {
    return Arrays.stream(choice.getPermittedSubclasses())
        .<Class<?>>flatMap(t -> t.isSealed() ? alternatives(t).stream() : Stream.of(t))
        .toList();
  }

  /** Return the word by which a record is picked, if it is an alternative. */
  static Optional<String> kind(Class<?> type) {
    return Optional.ofNullable(type.getAnnotation(Kind.class)).map(Kind::value);
  }

  private Shape shape(Type type, Optional<Between> between, Optional<Written> written) {
    if (isA(List.class, type)) {
      return new ListShape(shape(argument(type), between, written));
    }
    if (!(type instanceof Class<?> plain)) {
      throw new IllegalStateException("no shape for " + type);
    }
    if (plain == String.class) {
      return new TextShape(written);
    }
    if (plain == boolean.class || plain == Boolean.class) {
      return new FlagShape();
    }
    if (plain == int.class || plain == Integer.class) {
      return NumberShape.whole(NumberShape.Limits.of(between));
    }
    if (plain == double.class || plain == Double.class) {
      return NumberShape.decimal(NumberShape.Limits.of(between));
    }
    if (plain == Quantity.class) {
      return new QuantityShape(
          NumberShape.decimal(NumberShape.Limits.of(between)), group(Quantity.class, between));
    }
    if (plain == Direction.class) {
      return new DirectionShape();
    }
    return plain.isEnum() ? WordShape.of(plain) : composed(plain);
  }

  private Shape composed(Class<?> type) {
    Shape made = known.get(type);
    if (made != null) {
      return made;
    }
    if (type.isRecord()) {
      return group(type, Optional.empty());
    }
    if (!type.isSealed()) {
      throw new IllegalStateException("no shape for " + type);
    }
    ChoiceShape choice = new ChoiceShape();
    known.put(type, choice);
    for (Class<?> alternative : alternatives(type)) {
      choice.add(kind(alternative).orElseThrow(), composed(alternative));
    }
    return choice;
  }

  /** Make the shape of a record; limits given from outside hold for all its components. */
  private RecordShape group(Class<?> type, Optional<Between> outer) {
    List<RecordComponent> components = List.of(type.getRecordComponents());
    RecordShape shape =
        new RecordShape(components.stream().map(RecordComponent::getName).toList(), maker(type));
    if (outer.isEmpty()) {
      known.put(type, shape);
    }
    kind(type).ifPresent(word -> shape.add(kindField(word, shape)));
    for (RecordComponent component : components) {
      shape.add(component(component, outer));
    }
    return shape;
  }

  private static Component kindField(String word, Shape picked) {
    WordShape only = new WordShape(Map.of(word, picked));
    return new Component(
        ChoiceShape.KIND, only, Component.Presence.REQUIRED, Optional.empty(), ChoiceShape.KIND);
  }

  private Component component(RecordComponent component, Optional<Between> outer) {
    Type type = component.getGenericType();
    Optional<Between> between =
        Optional.ofNullable(component.getAnnotation(Between.class)).or(() -> outer);
    Optional<Written> written = Optional.ofNullable(component.getAnnotation(Written.class));
    Optional<String> meaning =
        Optional.ofNullable(component.getAnnotation(Meaning.class)).map(Meaning::value);
    Type inner = isA(Optional.class, type) ? argument(type) : type;
    Shape shape = shape(inner, between, written);
    OneOrMany oneOrMany = component.getAnnotation(OneOrMany.class);
    return new Component(
        name(component),
        oneOrMany == null ? shape : new OneOrManyShape((ListShape) shape, oneOrMany.word()),
        Component.Presence.of(component),
        meaning,
        component.getName());
  }

  /** Return the name of a component in the file. */
  static String name(RecordComponent component) {
    Named named = component.getAnnotation(Named.class);
    return named == null ? component.getName() : named.value();
  }

  private static Constructor<?> maker(Class<?> type) {
    Class<?>[] types =
        Arrays.stream(type.getRecordComponents())
            .map(RecordComponent::getType)
            .toArray(Class<?>[]::new);
    try {
      Constructor<?> constructor = type.getDeclaredConstructor(types);
      constructor.setAccessible(true);
      return constructor;
    } catch (NoSuchMethodException exception) {
      throw new IllegalStateException("no canonical constructor: " + type, exception);
    }
  }

  private static boolean isA(Class<?> generic, Type type) {
    return type instanceof ParameterizedType parameterized && parameterized.getRawType() == generic;
  }

  private static Type argument(Type type) {
    return ((ParameterizedType) type).getActualTypeArguments()[0];
  }
}
