package org.bonewright.casefile.reading;

import com.fasterxml.classmate.ResolvedType;
import com.github.victools.jsonschema.generator.CustomDefinition;
import com.github.victools.jsonschema.generator.CustomPropertyDefinition;
import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.MemberScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaGenerationContext;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import com.github.victools.jsonschema.generator.TypeScope;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Meaning;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Makes a JSON Schema, draft 2020-12, that accepts what {@link RecordReader} accepts.
 *
 * <p>The generator walks the records, names the definitions and closes the groups; {@link
 * ValueSchema} says what the value of one field must look like.
 */
final class RecordSchema {

  private static final JsonMapper MAPPER = JsonMapper.shared();

  private RecordSchema() {}

  /** Return the schema of a whole file. */
  static ObjectNode of(Class<?> type) {
    SchemaGeneratorConfigBuilder config =
        new SchemaGeneratorConfigBuilder(
                MAPPER, SchemaVersion.DRAFT_2020_12, OptionPreset.PLAIN_JSON)
            .with(
                Option.DEFINITIONS_FOR_ALL_OBJECTS,
                Option.PLAIN_DEFINITION_KEYS,
                Option.FORBIDDEN_ADDITIONAL_PROPERTIES_BY_DEFAULT)
            .without(Option.FLATTENED_OPTIONALS);
    config
        .forTypesInGeneral()
        .withPropertySorter(Comparator.comparingInt(RecordSchema::position))
        .withDescriptionResolver(scope -> meaning(scope.getType().getErasedType()))
        .withCustomDefinitionProvider(RecordSchema::choice)
        .withTypeAttributeOverride((node, scope, context) -> addKind(node, scope));
    config
        .forFields()
        .withPropertyNameOverrideResolver(field -> Shapes.name(component(field)))
        .withRequiredCheck(RecordSchema::isRequired)
        .withDescriptionResolver(field -> meaning(component(field)))
        .withCustomDefinitionProvider(RecordSchema::property);
    ObjectNode schema = new SchemaGenerator(config.build()).generateSchema(type);
    if (type.isSealed()) {
      for (Class<?> alternative : Shapes.alternatives(type)) {
        allowSchema(
            schema.withObjectProperty("$defs").withObjectProperty(alternative.getSimpleName()));
      }
    } else {
      allowSchema(schema);
    }
    return schema;
  }

  /** Let a whole file say where its schema is found. */
  private static void allowSchema(ObjectNode file) {
    file.withObjectProperty("properties")
        .putObject(Shapes.SCHEMA)
        .put("description", "Where an editor finds this schema; ignored.");
  }

  /** Return the schema of a field, unless it is a plain reference, which the generator makes. */
  private static @Nullable CustomPropertyDefinition property(
      FieldScope field, SchemaGenerationContext context) {
    RecordComponent component = component(field);
    if (ValueSchema.isReferred(component.getType())) {
      return null;
    }
    ObjectNode schema =
        ValueSchema.of(
            component,
            type -> context.createDefinitionReference(context.getTypeContext().resolve(type)));
    String meaning = meaning(component);
    if (meaning != null) {
      schema.put("description", meaning);
    }
    return new CustomPropertyDefinition(schema, CustomDefinition.AttributeInclusion.NO);
  }

  /** Return one definition for each alternative of a sealed interface, told apart by kind. */
  private static @Nullable CustomDefinition choice(
      ResolvedType type, SchemaGenerationContext context) {
    if (!type.getErasedType().isSealed()) {
      return null;
    }
    ObjectNode schema = MAPPER.createObjectNode();
    for (Class<?> alternative : Shapes.alternatives(type.getErasedType())) {
      ResolvedType resolved = context.getTypeContext().resolve(alternative);
      schema.withArrayProperty("oneOf").add(context.createDefinitionReference(resolved));
    }
    return new CustomDefinition(
        schema, CustomDefinition.DefinitionType.STANDARD, CustomDefinition.AttributeInclusion.NO);
  }

  /** Put the field kind in front of the other fields of an alternative. */
  private static void addKind(ObjectNode node, TypeScope scope) {
    Optional<String> kind = Shapes.kind(scope.getType().getErasedType());
    if (kind.isEmpty()) {
      return;
    }
    ObjectNode properties = MAPPER.createObjectNode();
    properties.putObject(ChoiceShape.KIND).put("const", kind.get());
    properties.setAll(node.withObjectProperty("properties"));
    node.set("properties", properties);
    node.withArrayProperty("required").insert(0, ChoiceShape.KIND);
  }

  private static boolean isRequired(FieldScope field) {
    return Component.Presence.of(component(field)) == Component.Presence.REQUIRED;
  }

  private static @Nullable String meaning(AnnotatedElement element) {
    Meaning meaning = element.getAnnotation(Meaning.class);
    return meaning == null ? null : meaning.value();
  }

  private static RecordComponent component(MemberScope<?, ?> member) {
    return components(member).get(position(member));
  }

  /** Return the place of a component in its record; fields themselves have no order. */
  private static int position(MemberScope<?, ?> member) {
    List<String> names = components(member).stream().map(RecordComponent::getName).toList();
    return names.indexOf(member.getDeclaredName());
  }

  private static List<RecordComponent> components(MemberScope<?, ?> member) {
    return Arrays.asList(member.getDeclaringType().getErasedType().getRecordComponents());
  }
}
