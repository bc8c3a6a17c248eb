namespace Proveout.Engine.Machine;

/// <summary>Takes a machine apart into the stages in which it is built.</summary>
public static class BuildStages
{
    /// <summary>The stages: first without all that comes later, last the whole machine. One stage when nothing comes later.</summary>
    public static IReadOnlyList<BuildStage> Of(MachineDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return
        [
            .. Enumerable.Range(0, design.Later.Count + 1).Select(fitted =>
            {
                var missing = design.Later.Skip(fitted).ToValueList();
                return new BuildStage(fitted == 0 ? null : design.Later[fitted - 1], missing, Without(design, missing));
            }),
        ];
    }

    private static MachineDesign Without(MachineDesign design, ValueList<LaterFitting> missing)
    {
        if (missing.Count == 0)
            return design;
        var absent = missing.SelectMany(fitting => fitting.Parts).ToHashSet(StringComparer.Ordinal);
        return design with
        {
            Name = $"{design.Name} without {string.Join(" and ", missing.Select(fitting => fitting.Name))}",
            Parts = design.Parts.Where(part => !absent.Contains(part.Designation)).ToValueList(),
            Conductors = design.Conductors.Where(conductor => !absent.Contains(conductor.From.Part) && !absent.Contains(conductor.To.Part)).ToValueList(),
            Heated = design.Heated.Where(body => !absent.Contains(body.Heater)).ToValueList(),
            Bays = design.Bays.Select(bay => Without(bay, absent)).ToValueList(),
            Later = [],
        };
    }

    // An opening whose fan comes later is a hole until then.
    private static Bay Without(Bay bay, HashSet<string> absent) => bay with
    {
        Parts = bay.Parts.Where(part => !absent.Contains(part)).ToValueList(),
        Contents = bay.Contents.Where(content => !absent.Contains(content.Part)).ToValueList(),
        Openings = bay.Openings.Select(opening => opening.Fan is { } fan && absent.Contains(fan.Part) ? opening with { Fan = null } : opening).ToValueList(),
    };
}
