using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>What a meter shows between two terminals, with the leads either way round.</summary>
/// <param name="SetUp">The state of the machine; its cautions come first.</param>
/// <param name="One">With the red lead on the first terminal.</param>
/// <param name="Other">With the leads exchanged.</param>
public sealed record BothWays(SetUp SetUp, ExpectedReading One, ExpectedReading Other);
