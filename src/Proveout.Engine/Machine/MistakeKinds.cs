namespace Proveout.Engine.Machine;

/// <summary>The kinds of mistake that a machine file may switch off or weigh anew.</summary>
/// <remarks>The trades generate them; a test holds that these are exactly the kinds that they register.</remarks>
public static class MistakeKinds
{
    /// <summary>Every kind, in the order in which coverage is listed.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "bond-missing",
        "bond-extra",
        "conductor-missing",
        "data-cores-missing",
        "end-on-neighbour",
        "ahead-of-switch",
        "ends-swapped",
        "ends-exchanged",
        "line-neutral-swapped",
        "conductors-exchanged",
        "contacts-mirrored",
        "contacts-shifted",
        "sides-exchanged",
        "part-reversed",
        "parts-exchanged",
        "connectors-exchanged",
        "plug-shifted",
        "plug-reversed",
        "contact-pushed-back",
        "poor-mating",
        "bridge",
        "bridge-in-cable",
        "bridge-to-metal",
        "body-contact",
        "insulation-broken",
        "leakage",
        "weak-joint",
        "poor-joint",
        "jumper-wrong",
        "jumper-missing",
        "jumper-across",
        "jumper-extra",
        "terminator-extra",
        "supplies-joined",
        "contact-sense",
        "contact-stuck-closed",
        "contact-never-closes",
        "switch-shorted",
        "wrong-value",
        "sensor-other-type",
        "element-open",
        "element-shorted",
        "fuse-open",
        "protection-bypassed",
    ];
}
