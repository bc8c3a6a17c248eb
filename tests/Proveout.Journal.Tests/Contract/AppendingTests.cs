using System.Reflection;
using Proveout.Journal.Chain;
using Proveout.Journal.Store;

namespace Proveout.Journal.Tests.Contract;

/// <summary>What is recorded by somebody else between two statements of one transaction.</summary>
public sealed class AppendingTests
{
    [Fact]
    public void A_build_that_another_server_records_between_two_looks_is_found_and_not_refused_as_the_holder_of_its_serial_number()
    {
        var draft = Drafts.Build();
        var rows = DispatchProxy.Create<IJournalRows, RowsBetweenLooks>();
        ((RowsBetweenLooks)(object)rows).Recorded = StoredBuild.From(draft, new DateTimeOffset(2031, 3, 14, 9, 0, 0, TimeSpan.Zero));

        Assert.Equal(draft.Id, Appending.Start(rows, draft, TimeProvider.System).Id);
    }

    // Not there yet by its identifier; there by its serial number.
    public class RowsBetweenLooks : DispatchProxy
    {
        internal StoredBuild? Recorded { get; set; }

        protected override object? Invoke(MethodInfo? targetMethod, object?[]? args) => targetMethod!.Name == nameof(IJournalRows.FindBuild)
            ? args!.Length == 2 ? Recorded : null
            : throw new InvalidOperationException("Nothing else is to be asked or added.");
    }
}
