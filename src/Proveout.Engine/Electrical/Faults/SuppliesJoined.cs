using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The positive poles of two supplies are joined without provision.</summary>
internal sealed class SuppliesJoined : IWiringFaultRule
{
    private const double LowOhms = 0.001;
    private const double HighOhms = 0.1;

    public string Kind => "supplies-joined";

    public string Words => "supplies joined without provision";

    public double Prior => Priors.SuppliesJoined;

    public IEnumerable<WiringFault> Generate(WiringContext context)
    {
        var supplies =
            (from part in context.Design.Parts
             where part.Type.ClassLetter == "T"
             from source in part.Type.Circuit.OfType<Source>().Take(1)
             let plus = context.FindNode(part.Designation, source.A)
             where plus is not null
             select (part.Designation, Plus: plus.Value)).ToArray();
        return from one in supplies
               from two in supplies
               where string.CompareOrdinal(one.Designation, two.Designation) < 0
               select WiringContext.Fault(
                   this,
                   $"{one.Designation}:{two.Designation}",
                   $"The positive poles of {one.Designation} and {two.Designation} are joined.",
                   [one.Designation, two.Designation],
                   new Consequence(Severity.Damage, "One supply feeds the other, or carries the load of both."),
                   "Eye: each load hangs on one supply; ohms between the positive poles.",
                   new Join(one.Plus, two.Plus, LowOhms, HighOhms));
    }
}
