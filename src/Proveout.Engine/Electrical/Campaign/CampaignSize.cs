using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>How large a machine may be for its fault campaign.</summary>
public static class CampaignSize
{
    /// <summary>Most terminals; above, memory and time grow out of hand.</summary>
    public const int MostTerminals = 20_000;

    /// <summary>Why a machine is too large; null when it is not.</summary>
    public static Diagnostic? Refuse(MachineDesign design)
    {
        var count = design.Parts.Sum(part => (long)part.Type.Terminals.Count);
        return count <= MostTerminals
            ? null
            : new Diagnostic(
                "too-large",
                new(design.Name, 0, 0),
                string.Create(CultureInfo.InvariantCulture, $"The machine has {count} terminals; checks are computed for at most {MostTerminals}."),
                "Describe it as several machines, parted where a plug parts them.");
    }
}
