package frieze.rs274;

/**
 * A letter and its value.
 *
 * @param letter a capital
 * @param value as computed, in the program's units
 * @param column of the letter in its line, in UTF-16 units, counted from 1
 * @param text as it is written, blanks included
 */
public record Word(char letter, double value, int column, String text) {}
