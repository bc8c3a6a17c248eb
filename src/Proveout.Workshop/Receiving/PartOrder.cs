using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>The order in which parts are looked for in a parcel: like by like.</summary>
internal static class PartOrder
{
    public static IEnumerable<Part> Of(MachineDesign design) =>
        design.Parts.OrderBy(part => part.Type.ClassLetter, StringComparer.Ordinal).ThenBy(part => part.Type.Name, StringComparer.Ordinal);
}
