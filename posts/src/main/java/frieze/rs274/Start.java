package frieze.rs274;

import frieze.motion.Executed.MachinePosition;
import frieze.motion.Position;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What is known of a machine when a program starts.
 *
 * @param unit the unit in force
 * @param position where the tool stands, in the work coordinates of system 1 (G54), in millimetres;
 *     empty when nobody knows
 * @param workOffsets the origins of systems 1 .. 9 in machine coordinates (mm), each axis known or
 *     not; a system that is not listed is unknown
 * @param home28 where G28 goes, in machine coordinates (mm)
 * @param home30 where G30 goes
 * @param toolLengthsMm the length that G43 takes from each slot; a slot that is not listed is
 *     unknown
 * @param toolSlots the highest slot; empty leaves slot numbers unchecked
 * @param tool the tool in the spindle; empty when nobody knows
 */
public record Start(
    LengthUnit unit,
    Optional<Position> position,
    Map<Integer, MachinePosition> workOffsets,
    MachinePosition home28,
    MachinePosition home30,
    Map<Integer, Double> toolLengthsMm,
    OptionalInt toolSlots,
    OptionalInt tool) {
  /** Nothing known; millimetres in force. */
  public static final Start UNKNOWN =
      new Start(
          LengthUnit.MILLIMETRE,
          Optional.empty(),
          Map.of(),
          MachinePosition.UNKNOWN,
          MachinePosition.UNKNOWN,
          Map.of(),
          OptionalInt.empty(),
          OptionalInt.empty());

  public Start {
    workOffsets = Map.copyOf(workOffsets);
    toolLengthsMm = Map.copyOf(toolLengthsMm);
    for (int system : workOffsets.keySet()) {
      if (system < 1 || system > Frames.SYSTEMS) {
        throw new IllegalArgumentException(
            "coordinate systems have the numbers 1 .. 9 but one was " + system);
      }
    }
  }

  /**
   * All parameters at 0, as in the report's table 2, and the tool at a known place.
   *
   * @param position in machine coordinates, which are also those of all nine systems
   */
  public static Start zeroed(Position position) {
    MachinePosition zero = known(0, 0, 0);
    Map<Integer, MachinePosition> offsets = new java.util.TreeMap<>();
    for (int system = 1; system <= Frames.SYSTEMS; system++) {
      offsets.put(system, zero);
    }
    return new Start(
        LengthUnit.MILLIMETRE,
        Optional.of(position),
        offsets,
        zero,
        zero,
        Map.of(),
        OptionalInt.empty(),
        OptionalInt.empty());
  }

  /** A machine position of which every axis is known. */
  public static MachinePosition known(double xMm, double yMm, double zMm) {
    return new MachinePosition(
        OptionalDouble.of(xMm), OptionalDouble.of(yMm), OptionalDouble.of(zMm));
  }

  public Start withUnit(LengthUnit newUnit) {
    return new Start(
        newUnit, position, workOffsets, home28, home30, toolLengthsMm, toolSlots, tool);
  }

  public Start withPosition(Position newPosition) {
    return new Start(
        unit,
        Optional.of(newPosition),
        workOffsets,
        home28,
        home30,
        toolLengthsMm,
        toolSlots,
        tool);
  }

  public Start withWorkOffsets(Map<Integer, MachinePosition> offsets) {
    return new Start(unit, position, offsets, home28, home30, toolLengthsMm, toolSlots, tool);
  }

  public Start withHomes(MachinePosition g28, MachinePosition g30) {
    return new Start(unit, position, workOffsets, g28, g30, toolLengthsMm, toolSlots, tool);
  }

  public Start withToolLengthsMm(Map<Integer, Double> lengths) {
    return new Start(unit, position, workOffsets, home28, home30, lengths, toolSlots, tool);
  }

  public Start withToolSlots(int slots) {
    return new Start(
        unit, position, workOffsets, home28, home30, toolLengthsMm, OptionalInt.of(slots), tool);
  }

  public Start withTool(int number) {
    return new Start(
        unit,
        position,
        workOffsets,
        home28,
        home30,
        toolLengthsMm,
        toolSlots,
        OptionalInt.of(number));
  }
}
