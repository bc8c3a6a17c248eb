using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Every exposed conductive part of a mains machine hangs on the protective conductor.</summary>
internal sealed class ExposedPartBonded : IReviewRule
{
    public string Id => "exposed-part-bonded";

    public string Words => "every metal part that could become live bonded to the protective terminal";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        if (context.Design.Mains is null)
            yield break;
        var nets = new ProtectiveNets(context);
        foreach (var part in context.Design.Parts.Where(part => part.Type.ExposedConductivePart && !IsBonded(nets, part)))
            yield return new Finding(
                Id,
                FindingSeverity.Error,
                [part.Designation],
                nets.HasEntry && LooksBonded(nets, part)
                    ? $"Paint, a slide or a hinge lies between {part.Designation} ({part.Name}) and the protective pin of the inlet: that is no bond, and an insulation fault leaves its metal live."
                    : nets.HasEntry
                    ? $"No protective conductor joins {part.Designation} ({part.Name}) to the protective pin of the inlet: an insulation fault leaves its metal live."
                    : $"{part.Designation} ({part.Name}) is metal that could become live, and no inlet of the machine has a protective pin.",
                "Run a green-yellow conductor from its bonding point to the earth bar, on bared metal.",
                "IEC 60204-1 clause 8.2.1; IEC 60364-4-41 clause 411.3.1");
    }

    private static bool LooksBonded(ProtectiveNets nets, Part part) => part.Type.Terminals
        .Where(terminal => terminal.Role == TerminalRole.ProtectiveEarth)
        .Select(terminal => new TerminalReference(part.Designation, terminal.Name))
        .Any(nets.LooksBonded);

    private static bool IsBonded(ProtectiveNets nets, Part part) => part.Type.Terminals
        .Where(terminal => terminal.Role == TerminalRole.ProtectiveEarth)
        .Select(terminal => new TerminalReference(part.Designation, terminal.Name))
        .Any(nets.IsBonded);
}
