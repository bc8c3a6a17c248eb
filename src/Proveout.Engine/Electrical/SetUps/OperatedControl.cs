namespace Proveout.Engine.Electrical;

/// <summary>A control held in a position other than its rest position.</summary>
/// <param name="Part">Designation of the part that it is on.</param>
/// <param name="Control">Its name.</param>
/// <param name="Position">Where it is held.</param>
public sealed record OperatedControl(string Part, string Control, string Position)
{
    /// <summary>The contacts that it moves, in whatever position they are open or closed.</summary>
    internal IEnumerable<NetworkElement> ContactsIn(WiringNetwork wiring) => wiring.ContactsOf(Part, Control);
}
