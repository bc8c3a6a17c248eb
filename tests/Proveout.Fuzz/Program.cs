using System.Diagnostics;
using System.Globalization;
using Proveout.Fuzz;

if (FuzzOptions.Of(args) is not { } options)
{
    Console.Error.WriteLine(FuzzOptions.Usage);
    return 2;
}

using var box = new BlackBox(options.Findings);
if (box.LeftBehind is { } fatal)
    await Keep(new Finding("unknown", "end of the process", "", fatal));
var start = Stopwatch.GetTimestamp();
var length = TimeSpan.FromMinutes(options.Minutes);
var counts = options.Targets.ToDictionary(target => target, _ => 0L);
var kinds = new HashSet<string>(StringComparer.Ordinal);
var most = options.Targets.ToDictionary(target => target, _ => 0);
for (var round = 0; round == 0 || Stopwatch.GetElapsedTime(start) < length; round++)
{
    foreach (var target in options.Targets)
    {
        // A long run gives each target the same time; a short one the same number.
        var share = options.Minutes > 0 ? TimeSpan.FromSeconds(Math.Max(5, length.TotalSeconds / options.Targets.Count / 4)) : TimeSpan.MaxValue;
        var campaign = new Campaign(target, options.Seed + round) { Before = box.Take };
        campaign.Run(options.Minutes > 0 ? long.MaxValue : options.Mutations, share);
        counts[target] += campaign.Count;
        most[target] = Math.Max(most[target], campaign.Outcomes);
        foreach (var finding in campaign.Findings)
            if (kinds.Add($"{target.Name} {finding.Kind}"))
                await Keep(finding);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Stopwatch.GetElapsedTime(start).TotalMinutes,6:0.0} min  {target.Name,-16} {counts[target],10} inputs, {most[target]} outcomes, {kinds.Count} failures in all"));
        if (options.Minutes > 0 && Stopwatch.GetElapsedTime(start) >= length)
            break;
    }
}

box.Clear();
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{counts.Values.Sum()} inputs fuzzed, {kinds.Count} failures"));
return kinds.Count == 0 ? 0 : 1;

async Task Keep(Finding finding)
{
    var folder = Path.Combine(options.Findings, finding.Target);
    Directory.CreateDirectory(folder);
    var name = string.Concat(finding.Kind.Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '-'));
    await File.WriteAllBytesAsync(Path.Combine(folder, name), finding.Input);
    await File.WriteAllTextAsync(Path.Combine(folder, $"{name}.txt"), finding.Detail);
    Console.WriteLine($"FAILED {finding}: {finding.Detail.Split('\n')[0]}");
}
