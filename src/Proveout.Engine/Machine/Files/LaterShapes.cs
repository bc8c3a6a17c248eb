namespace Proveout.Engine.Machine;

/// <summary>How what is left for later stands in a file.</summary>
internal static class LaterShapes
{
    private static readonly WordShape<LaterEffect> Effect = new(
        "effect",
        (LaterEffect.Air, "air"),
        (LaterEffect.Heat, "heat"),
        (LaterEffect.Frame, "frame"),
        (LaterEffect.Motion, "motion"));

    private static readonly RecordShape<LaterFitting> Fitting = new(
        "fitting",
        [
            Key<LaterFitting>.Optional("parts", "Parts that come with it; their conductors do too.", new ListShape<string>(new NameShape(NameRule.Mark("part"))), fitting => fitting.Parts, []),
            Key<LaterFitting>.Optional("affects", "What it changes besides wiring.", new ListShape<LaterEffect>(Effect), fitting => fitting.Affects, []),
            Key<LaterFitting>.Optional("note", "Anything a builder should know.", TextShape.Instance, fitting => fitting.Note, ""),
        ],
        fields => new(fields.Name, fields.Get<ValueList<string>>("parts"), fields.Get<ValueList<LaterEffect>>("affects"), fields.Text("note")));

    public static readonly NamedShape<LaterFitting> Fittings = new(NameRule.Mark("fitting"), Fitting, fitting => fitting.Name);
}
