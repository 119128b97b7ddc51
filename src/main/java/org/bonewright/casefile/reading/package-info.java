/**
 * From the bytes of a case file to a checked {@link org.bonewright.casefile.CaseFile}, or to
 * everything that is wrong with it.
 *
 * <p>Entry type: {@link org.bonewright.casefile.reading.CaseReader}. Bytes enter; a {@link
 * org.bonewright.casefile.reading.Reading} leaves: the bound records, or the complete list of
 * problems, each with its JSON pointer, what was found and what is allowed. Three steps follow each
 * other: the text becomes a tree whose every part knows its place, the tree is held against shapes
 * that are made from the record components, and records are made from what fits. {@link
 * org.bonewright.casefile.reading.CaseSchema} publishes the same shapes as a JSON Schema. A fault
 * of the file is never an exception here. Whether the fields of a sound file agree with each other
 * is not judged in this package, and no value is filled in.
 */
@NullMarked
package org.bonewright.casefile.reading;

import org.jspecify.annotations.NullMarked;
