package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** A plan for the next operation, in one stage or several. */
public record Plan(
    @Meaning("Name of the plan in this file.")
        @Written(
            regex = "[a-z0-9][a-z0-9-]{0,39}",
            inWords = "small letters, digits and hyphens, at most 40")
        String id,
    @Meaning("What it is, in a few words.") Optional<String> label,
    @Meaning("Whether it is the one to be carried out.") Optional<Boolean> chosen,
    @Meaning("Its stages in order.") List<Operation> stages,
    @Meaning("Who acts on late culture results, and how.") Optional<String> resultPath,
    @Meaning("Whether the patient is sent to an endocrinologist before it.")
        Optional<Answer> endocrineReferral,
    @Meaning("What would lead to acting again.") List<String> triggers,
    @Meaning("Where and when it was discussed.") Optional<String> discussion,
    @Meaning("What else was considered.") List<String> alternatives) {}
