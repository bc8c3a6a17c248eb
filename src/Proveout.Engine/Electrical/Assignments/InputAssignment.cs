using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Engine.Electrical;

/// <summary>What an input of a controller reads, as wired.</summary>
/// <param name="Part">The board.</param>
/// <param name="Terminal">Its signal terminal.</param>
/// <param name="Sensor">Designation of what it reads.</param>
/// <param name="SensorName">What that is for.</param>
/// <param name="Kinds">What kinds of sensor both sides agree on; empty when the part types do not say.</param>
/// <param name="Operated">How a contact is operated, such as <c>pressed</c>; empty for what has no contact.</param>
/// <param name="AtRest">Voltage at the terminal while the contact rests.</param>
/// <param name="WhenOperated">Voltage while it is operated; the same as at rest for what has no contact.</param>
public sealed record InputAssignment(
    string Part,
    string Terminal,
    string Sensor,
    string SensorName,
    IReadOnlyList<SensorKind> Kinds,
    string Operated,
    ElectricPotential AtRest,
    ElectricPotential WhenOperated)
{
    /// <summary>True when it reads a contact.</summary>
    public bool IsContact => Operated.Length > 0;

    /// <summary>True when operating the contact makes the voltage rise: a broken wire then looks operated, which is the safe way round.</summary>
    public bool RisesWhenOperated => WhenOperated > AtRest;
}
