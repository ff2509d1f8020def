using System.Diagnostics;
using System.Text;

namespace Runnel.Files.Tests;

/// <summary>Damaged copies of plans end in errors or in a plan: no exception, and none takes long.</summary>
public class DamageTests
{
    private const int Copies = 10_000;
    private const int Seed = 20261002;
    private static readonly string[] Strange =
        ["\u0000", "\uFEFF", "\u2028", "\u00A0", "\uD83D", "\U0001F41F", "\u202E", "½", "%", "&a", "*a", "!!", "|", ">", "? ", "- ", ": ", "{", "}", "[", "]", "\"", "'", "#", "\t", "\r", "---\n", "1e999", "-", "/", ",", "9999999999999999999", "likely", " to ", " per "];

    [Fact]
    public void Ten_thousand_damaged_plans_end_in_errors_or_a_plan()
    {
        var plans = Samples.Plans.Select(File.ReadAllText).Append(PlanFormatPage.Example).ToList();
        var random = new Random(Seed);
        var longest = TimeSpan.Zero;
        var (broken, whole) = (0, 0);
        for (var i = 0; i < Copies; i++)
        {
            var text = Damage(plans[i % plans.Count], random);
            var begun = Stopwatch.GetTimestamp();
            try
            {
                var file = PlanFile.Parse(text, "plan.yaml", _ => Damage(plans[0], random));
                Assert.Equal(file.Plan is null, file.Errors.Count > 0);
                Assert.All(file.Errors, e => Assert.True(e.Line >= 1 && e.Column >= 1 && e.Problem.Length > 0, e.ToString()));
                _ = file.Plan is null ? ++broken : ++whole;
            }
            catch (Exception e) when (e is not Xunit.Sdk.XunitException)
            {
                Assert.Fail($"copy {i}: {e}\n{text}");
            }
            var took = Stopwatch.GetElapsedTime(begun);
            longest = took > longest ? took : longest;
        }
        Assert.True(longest < TimeSpan.FromSeconds(2), $"the longest took {longest}");
        // The damage must be damage, and must not always be fatal to the YAML.
        Assert.True(broken > Copies / 10 && whole > Copies / 100, $"{broken} with errors, {whole} without");
    }

    private static string Damage(string plan, Random random)
    {
        var text = new StringBuilder(plan);
        for (var times = random.Next(1, 4); times > 0 && text.Length > 1; times--)
        {
            var at = random.Next(text.Length);
            var length = random.Next(1, Math.Min(40, text.Length - at) + 1);
            switch (random.Next(8))
            {
                case 0:
                    text[at] = (char)(text[at] ^ (1 << random.Next(8)));
                    break;
                case 1:
                    text.Remove(at, length);
                    break;
                case 2:
                    text.Insert(random.Next(text.Length), text.ToString(at, length));
                    break;
                case 3 when random.Next(4) == 0:
                    text.Length = at;
                    break;
                case 4:
                    Swap(text, random);
                    break;
                case 5:
                    text.Insert(at, (char)random.Next(1, 0x10000));
                    break;
                case 6:
                    text.Insert(at, string.Concat(Enumerable.Repeat(Strange[random.Next(Strange.Length)], random.Next(1, 4))));
                    break;
                default:
                    text.Remove(at, 1).Insert(at, (char)random.Next(32, 127));
                    break;
            }
        }
        return text.ToString();
    }

    private static void Swap(StringBuilder text, Random random)
    {
        var lines = text.ToString().Split('\n');
        var (a, b) = (random.Next(lines.Length), random.Next(lines.Length));
        (lines[a], lines[b]) = (lines[b], lines[a]);
        text.Clear().AppendJoin('\n', lines);
    }

    [Fact]
    public void A_damaged_plan_can_still_be_edited_or_says_that_it_cannot()
    {
        var random = new Random(Seed + 1);
        string[] paths = ["name", "lamps/over the beds/hours", "fish/0/number", "prices/tote 600 L", "water/use", "spare money", "pumps/main pump/curve/1"];
        for (var i = 0; i < 1000; i++)
        {
            var file = PlanFile.Parse(Damage(Samples.Cellar, random), "plan.yaml");
            var path = paths[i % paths.Length];
            if (!file.CanChange(path))
            {
                continue;
            }
            try
            {
                var changed = file.With(path, "17");
                Assert.Equal("17", changed.TextAt(path));
            }
            catch (ArgumentException)
            {
                // Refused: duplicate keys or text that ends in the middle. Never a damaged file.
            }
        }
    }
}
