using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What carries the heat of an electronic switch to the air.</summary>
/// <param name="Name">A designation, or <c>its own body</c>.</param>
/// <param name="KelvinsPerWatt">Its thermal resistance to the air.</param>
public sealed record SwitchSink(string Name, double KelvinsPerWatt)
{
    /// <summary>The part that carries it, or that its base is bonded to by a conductor of its own; or else its own body; null when none of them says.</summary>
    internal static SwitchSink? Of(ReviewContext context, Part part)
    {
        var neighbours = part.Type.Terminals
            .Where(terminal => terminal.Role == TerminalRole.ProtectiveEarth)
            .SelectMany(terminal => context.Context.ConductorsAt(new(part.Designation, terminal.Name)))
            .SelectMany(conductor => new[] { conductor.From.Part, conductor.To.Part });
        return neighbours.Prepend(part.Placement?.On ?? "")
            .Select(context.Design.FindPart)
            .OfType<Part>()
            .Append(part)
            .Where(found => found.Type.Ratings.ToAir is not null)
            .Select(found => new SwitchSink(found == part ? "its own body" : found.Designation, found.Type.Ratings.ToAir!.Value.KelvinsPerWatt))
            .FirstOrDefault();
    }
}
