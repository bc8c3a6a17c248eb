using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A set-up with the state of the machine that it means.</summary>
/// <param name="Text">What a person does and minds.</param>
/// <param name="State">What is then apart and where the controls stand.</param>
/// <param name="Operated">The control that is not at rest; null when all are.</param>
public sealed record ElectricalSetUp(SetUp Text, MachineState State, OperatedControl? Operated);
