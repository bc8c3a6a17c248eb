using Proveout.Journal.Tests.Postgres;

namespace Proveout.Workshop.Tests.Access;

public sealed class AccessDatabaseDesksTests(SharedServer shared) : AccessDesksContract
{
    private readonly SharedPlace _place = new(shared.Server);

    protected override AccessKeeping Open() => AccessKeeping.In(_place.Open())!;

    protected override void Close() => _place.Dispose();
}
