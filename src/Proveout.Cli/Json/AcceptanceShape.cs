using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What to watch, prove and look at again.</summary>
internal sealed record AcceptanceShape(string Format, string Machine, string Fingerprint, IReadOnlyList<AcceptanceItemShape> Items)
{
    public static AcceptanceShape Of(AcceptanceView view) => new(
        "proveout-acceptance 1", view.Machine.Name, view.Fingerprint, [.. view.Items.Select(AcceptanceItemShape.Of)]);
}

/// <summary>One thing to look at.</summary>
internal sealed record AcceptanceItemShape(
    string Id, string When, string Title, IReadOnlyList<string> Cautions, string Instruction, string Good, string Otherwise, string Source)
{
    public static AcceptanceItemShape Of(AcceptanceItem item) => new(
        item.Id, AcceptanceWords.Id(item.Phase), item.Title, AcceptanceView.CautionsOf(item.Phase), item.Instruction, item.Good, item.Otherwise, item.Source);
}
