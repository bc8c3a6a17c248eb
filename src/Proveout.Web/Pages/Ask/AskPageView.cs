using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Ask;

/// <summary>What the page of symptoms shows.</summary>
/// <param name="Ask">The machine's symptoms and what the answers say.</param>
/// <param name="Said">What a person wrote in plain words; empty when nothing.</param>
/// <param name="Proposed">The symptoms that this may mean.</param>
public sealed record AskPageView(AskView Ask, string Said, IReadOnlyList<Engine.Faults.Check> Proposed)
{
    /// <summary>The address with further symptoms reported as not so; the other answers stay.</summary>
    public string With(IEnumerable<Engine.Faults.Check> reported)
    {
        var bad = reported.Select(check => check.Id).ToHashSet(StringComparer.Ordinal);
        var answers = Ask.Groups.SelectMany(group => group.Symptoms)
            .Where(symptom => symptom.IsBad is not null || bad.Contains(symptom.Check.Id))
            .Select(symptom => $"{Uri.EscapeDataString(symptom.Check.Id)}={(symptom.IsBad == true || bad.Contains(symptom.Check.Id) ? "bad" : "good")}");
        return $"{Addresses.Ask(Ask.Machine.Id)}?{string.Join('&', answers)}";
    }
}
