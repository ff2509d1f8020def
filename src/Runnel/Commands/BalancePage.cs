using Runnel.App;
using Runnel.App.Report;
using Runnel.Engine.Assess;
using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;
using Runnel.Host.Commands.Print;

namespace Runnel.Host.Commands;

/// <summary>The balance of a loop on one page.</summary>
internal static class BalancePage
{
    private static readonly (string Id, string Name)[] OfPlan =
    [
        ("balance.feed", "Feed each day, when the fish are heaviest"),
        ("fish.mass", "Fish when heaviest"),
        ("stocking.density", "Fish in the tank"),
        ("stocking.most", "Most fish that the tanks should hold"),
        ("area.planted", "Planted area"),
        ("filter.area", "Surface for bacteria: there is"),
        ("filter.needed", "Surface for bacteria: needed at "),
        ("balance.oxygen", "Oxygen needed by fish and bacteria"),
        ("oxygen.saturation", "Oxygen that the water can hold, warmest month"),
        ("balance.solids", "Solids to catch, dry"),
        ("balance.ammonia", "Ammonia that the fish give off, as nitrogen"),
        ("balance.alkalinity", "Alkalinity used by the filter, at most"),
        ("balance.base", "Potassium bicarbonate that would replace it"),
        ("flow.turnover", "Tank volumes pumped each hour, at most"),
    ];

    public static void Print(Terminal terminal, OpenedPlan plan)
    {
        var sheet = new Sheet(terminal);
        var (assessment, style) = (plan.Assessment, plan.Style);
        var balance = assessment.Balance;
        sheet.Title($"{assessment.Plan.Name}: does everything balance?", assessment.Plan.Note);
        if (balance.Feed is null)
        {
            sheet.Gap();
            sheet.Say("The plan has neither fish, nor planted beds, nor a stated feed: there is nothing to balance yet.", Ink.Warning);
            sheet.Next($"{CommandLine.Name} check {plan.Typed}", "what the plan lacks");
            sheet.Print();
            return;
        }
        sheet.Say($"Feed is worked out from {From(balance.FeedFrom)}. “8 in 10” is the span that holds eight outcomes in ten.", Ink.Quiet);
        sheet.Heading("What the loop comes to");
        sheet.Add(Values(OfPlan.Where(r => assessment.Figures.Find(r.Id) is not null).Select(r => (Named(r.Name), assessment.Figures[r.Id])), style));
        Limits(sheet, balance, style);
        Span(sheet, assessment.Figures, style);
        sheet.Gap();
        sheet.Say("Every number opens: add --working ID, such as --working balance.feed.", Ink.Quiet);
        sheet.Next($"{CommandLine.Name} balance {plan.Typed} --from beds", "the fish, feed and filter that these beds ask for; or --from fish, feed, tank");
        sheet.Print();

        // The rule's rate is one at 20 °C.
        string Named(string name) => name.EndsWith(' ') ? name + style.Write(Amount.Of(20, Units.Celsius)) : name;
    }

    public static void Print(Terminal terminal, FigureBook book, BalanceEnd end, Estimate amount, Style style, OpenedPlan? plan, string command)
    {
        var sheet = new Sheet(terminal);
        var given = style.Write(new Amount(amount.Likely, amount.Unit));
        sheet.Title($"A balance from {Given(end)}: {given}");
        sheet.Say(plan is null
            ? "With the handbooks' values for leafy crops and omnivorous fish."
            : $"With what {plan.Assessment.Plan.Name} says, and the handbooks where it says nothing.", Ink.Quiet);
        sheet.Gap();
        sheet.Add(Values(book.All.Select(f => (f.Label ?? f.Id!, f)), style));
        Span(sheet, book, style);
        var assumed = Assumption.Of(book);
        if (assumed.Count > 0)
        {
            sheet.Heading("Assumed");
            AssumedPart.Print(sheet, style, assumed);
        }
        sheet.Next($"{command} --working balance.feed", "how a number came about; --working list names them all");
        sheet.Print();
    }

    private static Table Values(IEnumerable<(string Name, Figure Figure)> rows, Style style)
    {
        var table = new Table(2, new("", Gives: true), new("likely", Right: true), new("8 in 10", Right: true), new("unit"));
        foreach (var (name, figure) in rows)
        {
            table.Row(name, style.Value(figure), style.Range(figure), style.UnitOf(figure).Symbol);
        }
        return table;
    }

    private static void Limits(Sheet sheet, Balance balance, Style style)
    {
        if (balance.Limits.Count == 0)
        {
            return;
        }
        sheet.Heading("What limits it, the tightest first");
        var unit = style.UnitOf(balance.Limits[0].Allows).Symbol;
        var table = new Table(2, new("limit", Gives: true), new($"allows, {unit}", Right: true), new("8 in 10", Right: true), new("margin", Right: true), new(""));
        foreach (var limit in balance.Limits)
        {
            var over = limit.Margin.Si < 0;
            table.Row(over ? Ink.Warning : Ink.Plain,
                limit.Label, style.Value(limit.Allows), style.Range(limit.Allows), $"{100 * limit.Margin.Si:+#,##0;-#,##0;0} %", over ? "! overrun" : "");
        }
        sheet.Add(table);
        var tightest = balance.Limits[0];
        var allowed = style.Write(tightest.Allows);
        var fed = style.Write(balance.Feed!);
        sheet.Gap();
        sheet.Say(
            tightest.Margin.Si < 0
                ? $"{tightest.Label} is the tightest: it allows {allowed} of feed, and {fed} goes in."
                : $"{tightest.Label} is the tightest: it allows {allowed} of feed, and only {fed} goes in, so everything fits.",
            tightest.Margin.Si < 0 ? Ink.Warning : Ink.Good, 2);
    }

    /// <summary>How far the handbooks differ about feed and beds, with what was taken here.</summary>
    private static void Span(Sheet sheet, FigureBook book, Style style)
    {
        foreach (var ratio in Assumption.Of(book).Select(a => a.Estimate).Where(e => e.From.Path.StartsWith("feed/ratio", StringComparison.Ordinal)))
        {
            sheet.Gap();
            sheet.Say(
                $"Handbooks differ more than {Math.Floor(ratio.High / ratio.Low - 1e-9):0} times about feed and beds: {style.Write(new Amount(ratio.Low, ratio.Unit))} to "
                + $"{style.Write(new Amount(ratio.High, ratio.Unit))}; taken here {style.Write(new Amount(ratio.Likely, ratio.Unit))}. "
                + $"({ratio.From.Label}. {ratio.From.Source}.)", Ink.Plain, 2);
        }
    }

    private static string From(BalanceEnd end) => end switch
    {
        BalanceEnd.Feed => "what the plan states",
        BalanceEnd.Fish => "what the fish eat",
        BalanceEnd.Beds => "what the beds can use",
        _ => "what the tank can hold",
    };

    private static string Given(BalanceEnd end) => end switch
    {
        BalanceEnd.Feed => "feed each day",
        BalanceEnd.Fish => "the weight of all fish",
        BalanceEnd.Beds => "planted area",
        _ => "water in the fish tank",
    };
}
