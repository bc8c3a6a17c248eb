using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Symptoms;

/// <summary>A machine with its symptoms and live readings, asked for one fault at a time.</summary>
internal sealed class LiveMachine
{
    private static readonly Lazy<LiveMachine> LazyFlagship = new(() => new LiveMachine(Repository.Design("alderbrook")));
    private static readonly Lazy<LiveMachine> LazyRouter = new(() => new LiveMachine(Repository.Design("quarrymoor")));

    public LiveMachine(MachineDesign design)
    {
        Context = new WiringContext(WiringNetworkBuilder.Build(design));
        Faults = [.. WiringFaultRules.Generate(Context)];
        Campaign = new SymptomCampaign(new LiveModel(Context), Faults);
    }

    public static LiveMachine Flagship => LazyFlagship.Value;

    public static LiveMachine Router => LazyRouter.Value;

    public WiringContext Context { get; }

    public IReadOnlyList<WiringFault> Faults { get; }

    public SymptomCampaign Campaign { get; }

    public Check Check(string id) => Campaign.Checks[IndexOf(id)];

    public int Node(string part, string terminal) => Context.Wiring.TerminalNode(new TerminalReference(part, terminal));

    /// <summary>What a check may show under a fault of the machine.</summary>
    public ReadingInterval Shown(string check, string fault) => Shown(check, [.. Faults.Single(item => item.Fault.Id == fault).Changes]);

    /// <summary>What a check may show under changes made by hand.</summary>
    public ReadingInterval Shown(string check, params ElementChange[] changes) =>
        Campaign.Respond(changes).At(IndexOf(check)) ?? Check(check).Expectation;

    private int IndexOf(string id)
    {
        var found = Campaign.Checks.Index().Where(item => item.Item.Id == id).Select(item => (int?)item.Index).SingleOrDefault();
        return found ?? throw new ArgumentException($"There is no check {id}; there are {string.Join(", ", Campaign.Checks.Select(check => check.Id))}.");
    }
}
