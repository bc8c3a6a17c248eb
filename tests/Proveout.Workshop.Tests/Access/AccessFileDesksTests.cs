namespace Proveout.Workshop.Tests.Access;

public sealed class AccessFileDesksTests : AccessDesksContract
{
    private readonly string _folder = Directory.CreateTempSubdirectory("proveout-desks-").FullName;

    protected override AccessKeeping Open() => AccessKeeping.Beside(Path.Combine(_folder, "builds.db"));

    protected override void Close() => Directory.Delete(_folder, recursive: true);
}
