using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>One conductor from end to end.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Conductor">The conductor.</param>
/// <param name="From">Its first end.</param>
/// <param name="To">Its second end.</param>
/// <param name="Way">Its way.</param>
/// <param name="Carries">What it carries, in words.</param>
/// <param name="IsMains">True when it carries mains or protects against it.</param>
/// <param name="Drawings">How many sheets show it.</param>
public sealed record WireView(MachineSummary Machine, Conductor Conductor, WireEnd From, WireEnd To, ConductorWay Way, string Carries, bool IsMains, int Drawings)
{
    /// <summary>True when the machine file gives it a length that its way alone exceeds.</summary>
    public bool IsShort => Way.IsLongerThanGiven;
}
