using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>How what conductors and routes are made of stands in a file.</summary>
internal static class MakeShapes
{
    public static readonly WordShape<StrandKind> StrandWord = new(
        "make-up of strands",
        (StrandKind.Solid, "solid"),
        (StrandKind.Stranded, "stranded"),
        (StrandKind.Fine, "fine"),
        (StrandKind.ExtraFine, "extra-fine"));

    private static readonly OptionalShape<StrandKind> Strands = new(StrandWord);

    public static readonly WordShape<EndKind> EndWord = new(
        "dressing of an end",
        (EndKind.Bare, "bare"),
        (EndKind.Ferrule, "ferrule"),
        (EndKind.TwinFerrule, "twin-ferrule"),
        (EndKind.Crimp, "crimp"),
        (EndKind.Lug, "lug"),
        (EndKind.LugOnPaint, "lug-on-paint"),
        (EndKind.Receptacle, "receptacle"),
        (EndKind.Tinned, "tinned"),
        (EndKind.Solder, "solder"));

    private static readonly OptionalShape<EndKind> End = new(EndWord);

    public static readonly WordShape<StrainRelief> ReliefWord = new(
        "strain relief",
        (StrainRelief.Both, "both"),
        (StrainRelief.Moving, "moving"),
        (StrainRelief.Fixed, "fixed"),
        (StrainRelief.None, "none"));

    public static readonly OptionalShape<StrainRelief> Relief = new(ReliefWord);

    public static readonly WordShape<InstallationMethod> MethodWord = new(
        "method of installation",
        (InstallationMethod.B1, "B1"),
        (InstallationMethod.B2, "B2"),
        (InstallationMethod.C, "C"),
        (InstallationMethod.E, "E"));

    public static readonly OptionalShape<InstallationMethod> Method = new(MethodWord);

    public static readonly Key<Conductor>[] Make =
    [
        Key<Conductor>.Optional("strands", "How its copper is made up, IEC 60228.", Strands, conductor => conductor.Make.Strands),
        Key<Conductor>.Optional("from-end", "How its first end is dressed.", End, conductor => conductor.Make.FromEnd),
        Key<Conductor>.Optional("to-end", "How its second end is dressed.", End, conductor => conductor.Make.ToEnd),
        Key<Conductor>.Optional("insulation", "Rated voltage of its insulation.", Shapes.AnyVoltage, conductor => conductor.Make.Insulation),
        Key<Conductor>.Optional("diameter", "Diameter over the insulation, or of its cable.", Shapes.AnyLength, conductor => conductor.Make.Diameter),
        Key<Conductor>.Optional("cable", "The cable that it is a core of.", TextShape.Instance, conductor => conductor.Make.Cable),
        Key<Conductor>.Optional("flexing", "True when it is rated for continuous flexing.", new OptionalShape<bool>(FlagShape.Instance), conductor => conductor.Make.Flexing),
        Key<Conductor>.Optional("labelled", "False when it carries no label.", FlagShape.Instance, conductor => conductor.Make.Labelled, true),
    ];

    public static ConductorMake MakeOf(Fields fields) => new()
    {
        Strands = fields.Get<StrandKind?>("strands"),
        FromEnd = fields.Get<EndKind?>("from-end"),
        ToEnd = fields.Get<EndKind?>("to-end"),
        Insulation = fields.Get<ElectricPotential?>("insulation"),
        Diameter = fields.Get<Length?>("diameter"),
        Cable = fields.Text("cable"),
        Flexing = fields.Get<bool?>("flexing"),
        Labelled = fields.Get<bool>("labelled"),
    };
}
