package frieze.lower;

import frieze.motion.Instruction;

/** Treats every instruction alike; a pass overrides the kinds that it cares for. */
abstract class EachInstruction<R> implements Instruction.Visitor<R> {
  abstract R otherwise(Instruction instruction);

  @Override
  public R raiseToSafe(Instruction.RaiseToSafe instruction) {
    return otherwise(instruction);
  }

  @Override
  public R rapidXy(Instruction.RapidXy instruction) {
    return otherwise(instruction);
  }

  @Override
  public R rapidZ(Instruction.RapidZ instruction) {
    return otherwise(instruction);
  }

  @Override
  public R feed(Instruction.Feed instruction) {
    return otherwise(instruction);
  }

  @Override
  public R turn(Instruction.Turn instruction) {
    return otherwise(instruction);
  }

  @Override
  public R drill(Instruction.Drill instruction) {
    return otherwise(instruction);
  }

  @Override
  public R toolChange(Instruction.ToolChange instruction) {
    return otherwise(instruction);
  }

  @Override
  public R spindle(Instruction.Spindle instruction) {
    return otherwise(instruction);
  }

  @Override
  public R dwell(Instruction.Dwell instruction) {
    return otherwise(instruction);
  }

  @Override
  public R stop(Instruction.Stop instruction) {
    return otherwise(instruction);
  }

  @Override
  public R probe(Instruction.Probe instruction) {
    return otherwise(instruction);
  }

  @Override
  public R torch(Instruction.Torch instruction) {
    return otherwise(instruction);
  }

  @Override
  public R heightControl(Instruction.HeightControl instruction) {
    return otherwise(instruction);
  }

  @Override
  public R remark(Instruction.Remark instruction) {
    return otherwise(instruction);
  }
}
