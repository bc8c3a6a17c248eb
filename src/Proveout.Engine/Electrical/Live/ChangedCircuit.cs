namespace Proveout.Engine.Electrical;

/// <summary>A live circuit with the changes of a fault and of a stage in it.</summary>
internal sealed class ChangedCircuit
{
    public ChangedCircuit(LiveCircuit circuit, IReadOnlyList<ElementChange> changes, LiveStage? stage)
    {
        (Circuit, Changes, Stage) = (circuit, changes, stage);
        Siemens = [.. circuit.Siemens];
        var apart = new HashSet<int>();
        if (stage is not null)
            foreach (var element in stage.Apart)
            {
                Siemens[element] = 0;
                apart.Add(circuit.Branches[element].A);
            }

        var joins = new List<(int A, int B, double Siemens)>();
        foreach (var change in changes)
            Apply(change, apart, stage, joins);
        Joins = [.. joins];
    }

    public LiveCircuit Circuit { get; }

    public IReadOnlyList<ElementChange> Changes { get; }

    public LiveStage? Stage { get; }

    /// <summary>Conductance of each branch while it conducts.</summary>
    public double[] Siemens { get; }

    /// <summary>Contacts of the other sense: open where the sound machine closes them.</summary>
    public HashSet<int> Inverted { get; } = [];

    /// <summary>New contacts.</summary>
    public (int A, int B, double Siemens)[] Joins { get; }

    private void Apply(ElementChange change, HashSet<int> apart, LiveStage? stage, List<(int A, int B, double Siemens)> joins)
    {
        switch (change)
        {
            case Cut cut:
                Siemens[cut.Element] = 0;
                break;
            case Invert invert:
                Inverted.Add(invert.Element);
                break;
            // A plug in a wrong socket is apart when its own connector is.
            case Join join when join.A != join.B && !(join.ByPlug && apart.Contains(join.A)):
                joins.Add((join.A, join.B, 1 / join.LowOhms));
                break;
            case AddInSeries added when stage?.Apart.Contains(added.Element) != true:
                Siemens[added.Element] = 1 / ((1 / Siemens[added.Element]) + added.HighOhms);
                break;
            case Replace replace when stage?.Apart.Contains(replace.Element) != true:
                Siemens[replace.Element] = double.IsPositiveInfinity(replace.HighOhms) ? 1 / replace.LowOhms : 1 / Math.Sqrt(replace.LowOhms * replace.HighOhms);
                break;
        }
    }
}
