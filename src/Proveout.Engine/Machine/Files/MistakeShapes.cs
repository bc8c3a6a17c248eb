namespace Proveout.Engine.Machine;

/// <summary>How a machine's settings of kinds of mistake stand in a file: a key for every kind.</summary>
internal static class MistakeShapes
{
    public static readonly RecordShape<ValueList<MistakeSetting>> Settings = new(
        "list of mistakes",
        [
            .. MistakeKinds.All.Select(kind => Key<ValueList<MistakeSetting>>.Optional(
                kind,
                $"Mistakes of the kind {kind}: off, or the probability of each of them in one build.",
                ChanceShape.Instance,
                settings => settings.FirstOrDefault(setting => setting.Kind == kind)!)),
        ],
        fields => MistakeKinds.All.Select(fields.Get<MistakeSetting?>).OfType<MistakeSetting>().ToValueList());
}
