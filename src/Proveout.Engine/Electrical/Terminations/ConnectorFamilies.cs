using System.Collections.Frozen;

namespace Proveout.Engine.Electrical;

/// <summary>What each family of connectors asks of a conductor's end.</summary>
/// <remarks>
/// Torques: the values for steel screws of IEC 60999-1 table 4, column II, from memory (M2.5 0.4, M3 0.5, M4 1.2, M5 2.0 N·m), and for plugs 0.25 and
/// 0.5 N·m, common practice. Strip lengths are common practice. A part's own data sheet goes first.
/// </remarks>
internal static class ConnectorFamilies
{
    private static readonly FrozenDictionary<string, (TerminationKind Kind, double? StripMm, double? TorqueNewtonMetres)> Known =
        new Dictionary<string, (TerminationKind, double?, double?)>
        {
            ["screw-row"] = (TerminationKind.Ferrule, 8, 0.5),
            ["screw-m3"] = (TerminationKind.Ferrule, 8, 0.5),
            ["screw-m4"] = (TerminationKind.RingLug, 7, 1.2),
            ["clamp-16"] = (TerminationKind.Ferrule, 12, 2.0),
            ["plug-3.5"] = (TerminationKind.Ferrule, 7, 0.25),
            ["plug-5.08"] = (TerminationKind.Ferrule, 7, 0.5),
            ["lever"] = (TerminationKind.Stripped, 11, null),
            ["tab-2.8"] = (TerminationKind.Receptacle, 5, null),
            ["tab-4.8"] = (TerminationKind.Receptacle, 6, null),
            ["tab-6.3"] = (TerminationKind.Receptacle, 7, null),
            ["lock-2.0"] = (TerminationKind.CrimpContact, 2, null),
            ["lock-2.5"] = (TerminationKind.CrimpContact, 2.5, null),
            ["latched-3.0"] = (TerminationKind.CrimpContact, 3, null),
            ["inline-2.5"] = (TerminationKind.CrimpContact, 2.5, null),
            ["header-2.54"] = (TerminationKind.CrimpContact, 2.5, null),
            ["ribbon-2.54"] = (TerminationKind.RibbonContact, null, null),
            ["solder-pad"] = (TerminationKind.Solder, 3, null),
            ["appliance-inlet"] = (TerminationKind.ReadyMade, null, null),
            ["socket-outlet"] = (TerminationKind.ReadyMade, null, null),
            ["data-port"] = (TerminationKind.ReadyMade, null, null),
            ["moulded-lead"] = (TerminationKind.ReadyMade, null, null),
            ["round-dc"] = (TerminationKind.ReadyMade, null, null),
        }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>What a family asks for; unknown for one of the builder's own.</summary>
    public static (TerminationKind Kind, double? StripMm, double? TorqueNewtonMetres) Of(string family) =>
        Known.GetValueOrDefault(family, (TerminationKind.Unknown, null, null));
}
