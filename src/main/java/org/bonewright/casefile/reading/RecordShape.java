package org.bonewright.casefile.reading;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A group whose fields are the components of a record. */
final class RecordShape implements Shape {

  private final Map<String, Component> components = new LinkedHashMap<>();
  private final List<String> arguments;
  private final Constructor<?> constructor;
  private String fields = "no fields";

  /**
   * Prepare the shape of a record.
   *
   * @param arguments names of the record's components, in their order
   * @param constructor the record's canonical constructor
   */
  RecordShape(List<String> arguments, Constructor<?> constructor) {
    this.arguments = arguments;
    this.constructor = constructor;
  }

  /** Add a field. Fields come after the shape is made because a record may contain itself. */
  void add(Component component) {
    components.put(component.name(), component);
    fields = "the fields " + String.join(", ", components.keySet());
  }

  @Override
  public @Nullable Object read(Spot spot) {
    if (!(spot.part() instanceof Part.Group group)) {
      return spot.refuse(allowed());
    }
    return values(group, spot).map(values -> make(values, spot, group)).orElse(null);
  }

  /** Return the values of the record's components in their order, if each of them has one. */
  Optional<List<Object>> values(Part.Group group, Spot spot) {
    Map<String, Object> values = new HashMap<>();
    for (Component component : components.values()) {
      if (!group.fields().containsKey(component.name())) {
        keep(values, component.argument(), component.missing(spot));
      }
    }
    group.fields().forEach((name, part) -> take(values, name, spot.below(name, part), group));
    List<Object> inOrder =
        arguments.stream().flatMap(n -> Stream.ofNullable(values.get(n))).toList();
    return inOrder.size() == arguments.size() ? Optional.of(inOrder) : Optional.empty();
  }

  private void take(Map<String, Object> values, String name, Spot spot, Part.Group group) {
    Component component = components.get(name);
    if (component == null) {
      refuseUnknown(name, spot, group.fields().keySet());
    } else {
      keep(values, component.argument(), component.read(spot));
    }
  }

  private static void keep(Map<String, Object> values, String name, @Nullable Object value) {
    if (value != null) {
      values.put(name, value);
    }
  }

  private void refuseUnknown(String name, Spot spot, Collection<String> present) {
    List<String> free = components.keySet().stream().filter(n -> !present.contains(n)).toList();
    Optional<String> hint = Nearest.of(name, free).map(near -> "Did you mean \"" + near + "\"?");
    spot.meaning(Optional.empty()).refuse("the unknown field " + Quoted.of(name), fields, hint);
  }

  private @Nullable Object make(List<Object> values, Spot spot, Part.Group group) {
    try {
      Object made = constructor.newInstance(values.toArray());
      spot.problems().made(new ReadPart(spot.pointer(), made, places(group)));
      return made;
    } catch (InvocationTargetException exception) {
      if (exception.getCause() instanceof IllegalArgumentException refusal) {
        return spot.refuse(
            "fields that do not go together: " + refusal.getMessage(),
            "fields that agree with each other",
            Optional.empty());
      }
      throw new IllegalStateException("cannot make " + constructor, exception);
    } catch (ReflectiveOperationException exception) {
      throw new IllegalStateException("cannot make " + constructor, exception);
    }
  }

  private static Map<String, Place> places(Part.Group group) {
    Map<String, Place> places = new HashMap<>();
    places.put("", group.place());
    group.fields().forEach((name, part) -> places.put(name, part.place()));
    return places;
  }

  @Override
  public String allowed() {
    return "a group with " + fields;
  }
}
