using Proveout.Workshop;

namespace Proveout.Browser.Tests;

/// <summary>Every kind of page, by name.</summary>
internal static class PageAddresses
{
    public static async Task<IReadOnlyList<(string Name, string Address)>> AllAsync(BenchSite site)
    {
        var state = await site.StateAsync();
        // Computed once for all tests: a browser does not wait for it.
        _ = site.Bench.Energising(site.Build.MachineId);
        _ = site.Bench.Threes(site.Build.MachineId);
        return
        [
            ("front", "/"),
            ("check", site.Check(state.Steps.First(step => step.Status == StepStatus.Open && step.SetUpChanges))),
            ("check-kept", site.Check(state.FindStep(state.CurrentCheckId!)!)),
            ("pass", site.Check(state.Steps.First(step => step.Status == StepStatus.Passed))),
            ("fail", site.Check(state.Steps.First(step => step.Status == StepStatus.Failed))),
            ("list", $"/builds/{site.Build.Id}/checks"),
            ("parts", $"/builds/{site.Build.Id}/parts"),
            ("record", $"/builds/{site.Build.Id}/record"),
            ("plan", $"/machines/{site.Build.MachineId}/plan"),
            ("threes", $"/machines/{site.Build.MachineId}/plan/threes"),
            ("describe", "/describe"),
            ("guesses", $"/machines/{site.Described}/guesses"),
            ("edit-sample", $"/machines/{site.Build.MachineId}/edit"),
            ("edit", $"/machines/{site.Own}/edit"),
            ("edit-parts", $"/machines/{site.Own}/edit/parts?row=A1"),
            ("edit-conductors", $"/machines/{site.Own}/edit/conductors?new=1&from=A1.M0-1A"),
            ("edit-routes", $"/machines/{site.Own}/edit/routes"),
            ("edit-jumpers", $"/machines/{site.Own}/edit/jumpers"),
            ("edit-terminals", $"/machines/{site.Own}/edit/draw?part=A1&from=A1.M0-1A"),
            ("edit-file", $"/machines/{site.Own}/edit/file"),
            ("edit-wires", $"/machines/{site.Own}/edit/wires"),
            ("edit-revisions", $"/machines/{site.Own}/edit/revisions"),
            ("builds", $"/machines/{site.Build.MachineId}/builds?check={state.Steps.First(step => step.Status == StepStatus.Passed).Check.Id}"),
            ("review", $"/machines/{site.Build.MachineId}/review"),
            ("belts", $"/machines/{site.Build.MachineId}/belts"),
            ("heat", $"/machines/{site.Build.MachineId}/heat"),
            ("settings", $"/machines/{site.Build.MachineId}/settings"),
            ("settings-build", $"/builds/{site.Build.Id}/settings"),
            ("acceptance", $"/machines/{site.Build.MachineId}/acceptance"),
            ("acceptance-build", $"/builds/{site.Build.Id}/acceptance"),
            ("stages", $"/machines/{site.Build.MachineId}/stages"),
            ("heat-log", $"/machines/{site.Build.MachineId}/heat/log"),
            ("heat-log-by-hand", $"/machines/{site.Build.MachineId}/heat/log/by-hand"),
            ("air", $"/machines/{site.Build.MachineId}/air"),
            ("frame", "/frame"),
            ("level-plate", "/level"),
            ("piece", "/piece?travel-x=180&travel-y=180&travel-z=150"),
            ("resonance", "/resonance"),
            ("error-budget", "/budget"),
            ("paper", $"/machines/{site.Build.MachineId}/paper"),
            ("paper-list", $"/machines/{site.Build.MachineId}/paper?list=wire-list"),
            ("wire", $"/machines/{site.Build.MachineId}/wires/W51"),
            ("book", $"/machines/{site.Build.MachineId}/book"),
            ("book-build", $"/builds/{site.Build.Id}/book"),
            ("energise", $"/machines/{site.Build.MachineId}/energise"),
            ("walk", $"/machines/{site.Build.MachineId}/walk"),
            ("ask", $"/machines/{site.Build.MachineId}/ask"),
            ("answer", $"/machines/{site.Build.MachineId}/ask?{Symptom(site)}=bad"),
            ("tension", "/tension"),
            ("motor", "/motor?teeth=20&current=1.68&resistance=1.65&inductance=2.8&holding-torque=0.44&mass=0.5&acceleration=5&speed=300&belt-stiffness=10000&loop=1000&travel=300"),
            ("health", "/health"),
            ("stopwatch", "/stopwatch?from=0&to=83400"),
            ("offline", "/offline"),
            ("missing", "/nothing/here"),
        ];
    }

    private static string Symptom(BenchSite site) =>
        site.Bench.Ask(site.Build.MachineId, new Dictionary<string, bool>())!.Groups[0].Symptoms[0].Check.Id;
}
