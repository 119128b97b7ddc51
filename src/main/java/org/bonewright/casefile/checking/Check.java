package org.bonewright.casefile.checking;

/** One thing that must be so in every case file; its name says what. */
interface Check {

  /** Look through the file and note every place where it is not so. */
  void look(Contents contents, Objections objections);
}
