using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Samples;

public sealed class SampleMachineTests
{
    // Fuses, contacts, copper and bonds stay below this; coils, heaters and inputs above.
    private const double HighestOhmsOfAConnection = 0.45;

    public static TheoryData<string> Samples => [.. Repository.SampleNames];

    public static TheoryData<string> MainsSamples => ["alderbrook", "quarrymoor"];

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_sample_reads_without_a_diagnostic(string sample) => Assert.Empty(Repository.Read(sample).Diagnostics);

    [Theory]
    [InlineData("alderbrook", 180, 90)]
    [InlineData("pennywort", 60, 30)]
    [InlineData("quarrymoor", 100, 60)]
    public void A_sample_wires_as_many_terminals_as_it_promises(string sample, int terminals, int conductors)
    {
        var design = Repository.Design(sample);

        Assert.InRange(design.Conductors.SelectMany(Ends).Distinct().Count(), terminals, int.MaxValue);
        Assert.InRange(design.Conductors.Count, conductors, int.MaxValue);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void No_terminal_takes_two_conductors(string sample) =>
        Assert.Empty(Repository.Design(sample).Conductors.SelectMany(Ends).GroupBy(end => end).Where(end => end.Count() > 1).Select(end => end.Key));

    [Theory]
    [MemberData(nameof(Samples))]
    public void Green_yellow_is_for_protective_conductors_and_they_are_green_yellow(string sample)
    {
        // IEC 60445 clause 6.3.2.
        var design = Repository.Design(sample);

        Assert.All(design.Conductors, conductor => Assert.Equal(
            Ends(conductor).Any(end => design.FindTerminal(end)!.Role == TerminalRole.ProtectiveEarth),
            conductor.Colour == ConductorColour.GreenYellow));
    }

    [Theory]
    [MemberData(nameof(MainsSamples))]
    public void Line_is_brown_or_black_and_neutral_is_blue(string sample)
    {
        // IEC 60445 clause 6.2.
        var design = Repository.Design(sample);

        Assert.All(Carrying(design, TerminalRole.Line), conductor => Assert.Contains(conductor.Colour, new[] { ConductorColour.Brown, ConductorColour.Black }));
        Assert.All(Carrying(design, TerminalRole.Neutral), conductor => Assert.Equal(ConductorColour.Blue, conductor.Colour));
    }

    [Theory]
    [MemberData(nameof(MainsSamples))]
    public void Mains_conductors_are_at_least_three_quarters_of_a_square_millimetre(string sample)
    {
        // IEC 60204-1 table 5, flexible conductors of power circuits inside enclosures; from memory.
        var design = Repository.Design(sample);
        var mains = Carrying(design, TerminalRole.Line, TerminalRole.Neutral);

        Assert.NotEmpty(mains);
        Assert.All(mains, conductor => Assert.InRange(conductor.CrossSection.SquareMillimeters, 0.75, 2.5));
    }

    [Theory]
    [MemberData(nameof(MainsSamples))]
    public void Ducts_carry_mains_or_extra_low_voltage_but_not_both(string sample)
    {
        // IEC 60204-1 clause 13.1.3; protective conductors may run with either.
        var design = Repository.Design(sample);
        var mains = Carrying(design, TerminalRole.Line, TerminalRole.Neutral);
        var ducts = design.Routes.Where(route => route.Kind == RouteKind.Duct).Select(route => route.Name);

        Assert.All(ducts, duct => Assert.Single(design.Conductors
            .Where(conductor => conductor.Route.Contains(duct) && conductor.Colour != ConductorColour.GreenYellow)
            .Select(mains.Contains)
            .Distinct()));
    }

    [Theory]
    [MemberData(nameof(MainsSamples))]
    public void Every_exposed_conductive_part_is_bonded_to_the_earth_pin_of_the_inlet(string sample)
    {
        var design = Repository.Design(sample);
        var wiring = SampleWiring.Of(design, 0.1);
        var metal = design.Parts.Where(part => part.Type.ExposedConductivePart)
            .SelectMany(part => part.Type.Terminals.Where(terminal => terminal.Role == TerminalRole.ProtectiveEarth).Select(terminal => $"{part.Designation}.{terminal.Name}"))
            .ToList();

        Assert.NotEmpty(metal);
        Assert.All(metal, terminal => Assert.True(wiring.Joined("X1.PE-PIN", terminal), terminal));
    }

    [Theory]
    [MemberData(nameof(MainsSamples))]
    public void Zero_volt_is_bonded_to_protective_earth_exactly_once(string sample)
    {
        var design = Repository.Design(sample);
        var bond = design.Conductors.Single(conductor => conductor.Colour == ConductorColour.GreenYellow
            && Ends(conductor).Any(end => design.FindTerminal(end)!.Role == TerminalRole.ZeroVolt));

        Assert.True(SampleWiring.Of(design, HighestOhmsOfAConnection).Joined("T1.V-1", "X1.PE-PIN"));
        Assert.False(SampleWiring.Of(design, HighestOhmsOfAConnection, conductor => conductor == bond).Joined("T1.V-1", "X1.PE-PIN"));
    }

    [Theory]
    [InlineData("alderbrook", "T1.V+1", "Q2.A1", "")]
    [InlineData("alderbrook", "T1.V+1", "K1.A1", "")]
    [InlineData("pennywort", "T1.V+", "K1.A1", "")]
    [InlineData("quarrymoor", "T1.V+1", "K1.A1", "S1.button")]
    [InlineData("quarrymoor", "T1.V+1", "K3.A1", "S1.button")]
    public void The_emergency_stop_takes_the_feed_of_every_power_coil(string sample, string feed, string coil, string start)
    {
        // ISO 13850: opening contacts, and the stop goes before a start button that is held down.
        var design = Repository.Design(sample);
        Dictionary<string, string> started = start.Length > 0 ? new() { [start] = "pressed" } : [];
        bool IsFed(Dictionary<string, string> operated) => SampleWiring.Of(design, HighestOhmsOfAConnection, operated: operated).Joined(feed, coil);

        Assert.True(IsFed(started));
        Assert.False(IsFed(new(started) { ["S2.button"] = "pressed" }));
    }

    [Fact]
    public void The_router_starts_by_its_button_only_and_then_holds_itself()
    {
        var design = Repository.Design("quarrymoor");
        bool IsFed(string coil, Dictionary<string, string> operated) => SampleWiring.Of(design, HighestOhmsOfAConnection, operated: operated).Joined("T1.V+1", coil);
        Dictionary<string, string> commanded = new() { ["K2.test-lever"] = "pulled-in" };
        Dictionary<string, string> running = new(commanded) { ["K1.test-lever"] = "pulled-in", ["K3.test-lever"] = "pulled-in" };

        Assert.False(IsFed("K3.A1", commanded));
        Assert.False(IsFed("Q1.A1", commanded));
        Assert.True(IsFed("K3.A1", running));
        Assert.True(IsFed("Q1.A1", running));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_page_of_the_samples_states_their_size(string sample)
    {
        var design = Repository.Design(sample);
        var row = File.ReadLines(Repository.Folder("samples", "README.md")).Single(line => line.StartsWith($"| `{sample}` |", StringComparison.Ordinal));
        var wired = design.Conductors.SelectMany(Ends).Distinct().Count();

        Assert.EndsWith($"| {design.Parts.Count} | {wired} | {design.Conductors.Count} |", row, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(MainsSamples))]
    public void Line_neutral_earth_and_24_volt_are_separate_nets(string sample)
    {
        var wiring = SampleWiring.Of(Repository.Design(sample), HighestOhmsOfAConnection);
        string[] nets = ["X1.L-PIN", "X1.N-PIN", "X1.PE-PIN", "T1.V+1"];

        Assert.All(nets.SelectMany((a, at) => nets.Skip(at + 1).Select(b => (a, b))), pair => Assert.False(wiring.Joined(pair.a, pair.b), $"{pair}"));
        Assert.True(wiring.Joined("X1.L-PIN", "T1.L"));
        Assert.True(wiring.Joined("X1.N-PIN", "T1.N"));
    }

    private static List<Conductor> Carrying(MachineDesign design, params TerminalRole[] roles)
    {
        var wiring = SampleWiring.Of(design, HighestOhmsOfAConnection);
        var sources = design.Terminals.Where(terminal => roles.Contains(design.FindTerminal(terminal)!.Role)).ToList();
        return [.. design.Conductors.Where(conductor => sources.Any(source => wiring.Joined(source.ToString(), conductor.From.ToString())))];
    }

    private static TerminalReference[] Ends(Conductor conductor) => [conductor.From, conductor.To];
}
