package org.bonewright.casefile;

/** What an implant is made of; standards as in ISO 5832. */
public enum Material {
  /** Stainless steel, annealed (ISO 5832-1). */
  STEEL_ANNEALED,
  /** Stainless steel, cold worked (ISO 5832-1). */
  STEEL_COLD_WORKED,
  /** High-nitrogen steel (ISO 5832-9). */
  STEEL_HIGH_NITROGEN,
  /** Unalloyed titanium, grade 4 (ISO 5832-2). */
  TITANIUM_UNALLOYED,
  /** Titanium alloy with 6 % aluminium and 4 % vanadium, or 7 % niobium (ISO 5832-3, -11). */
  TITANIUM_ALLOY,
  /** Cobalt-chromium alloy (ISO 5832-12). */
  COBALT_CHROMIUM
}
