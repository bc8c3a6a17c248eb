using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Proveout.Browser.Tests;

/// <summary>What axe-core can decide of a page (WCAG 2.2 A and AA, and its own good practice).</summary>
internal static class PageRules
{
    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    private static readonly string[] OfColours = ["color-contrast", "link-in-text-block"];

    // Run in the page itself: our pages have no frames. What passes is only counted: to say where each node of it stands is most of the work on a long page.
    private const string Run = """
        async rules => {
          const options = { resultTypes: ["violations"], ...(rules.length > 0 ? { runOnly: { type: "rule", values: rules } } : {}) };
          const result = await axe.run(document, options);
          const broken = result.violations.map(item => `${item.id}: ${item.help}: ${item.nodes.slice(0, 3).map(node => node.html).join(", ")}`);
          return result.passes.length > 0 ? broken : ["No rule applied to anything on the page.", ...broken];
        }
        """;

    /// <summary>
    /// Each rule that the page breaks, with the first places. A dark page differs from the light one by its colours and by nothing else that a rule
    /// asks for, so only the rules of colours are asked of it.
    /// </summary>
    public static Task<string[]> BrokenAsync(IPage page, ColorScheme scheme) => scheme == ColorScheme.Dark ? TooFaintAsync(page) : RunAsync(page, []);

    /// <summary>Where colours are too near to each other to be told apart.</summary>
    public static Task<string[]> TooFaintAsync(IPage page) => RunAsync(page, OfColours);

    private static async Task<string[]> RunAsync(IPage page, string[] rules)
    {
        await page.EvaluateAsync(Axe);
        return await page.EvaluateAsync<string[]>(Run, rules);
    }
}
