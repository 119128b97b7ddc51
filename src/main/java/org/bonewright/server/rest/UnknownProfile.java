package org.bonewright.server.rest;

import java.util.stream.Collectors;
import org.bonewright.principles.Profile;
import org.bonewright.principles.RuleSet;

/** Says that there is no profile of a name. */
final class UnknownProfile extends Exception {

  private static final long serialVersionUID = 1L;

  UnknownProfile(String id, RuleSet rules) {
    super(
        "There is no profile "
            + id
            + "; allowed: "
            + rules.profiles().stream().map(Profile::id).collect(Collectors.joining(", "))
            + ".");
  }
}
