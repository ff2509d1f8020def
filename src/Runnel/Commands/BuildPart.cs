using Runnel.App;
using Runnel.App.Report;
using Runnel.Engine.Assess;
using Runnel.Engine.Figures;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Host.Commands.Print;

namespace Runnel.Host.Commands;

/// <summary>The build list of a cost page.</summary>
internal static class BuildPart
{
    public static void Print(Sheet sheet, Assessment assessment, Style style)
    {
        var figures = assessment.Figures;
        sheet.Heading("To build");
        var table = new Table(2, new("part", Gives: true), new("needed", Right: true), new("packs", Right: true), new("price", Gives: true), new("cost", Right: true));
        foreach (var group in assessment.Build.Sections)
        {
            table.Row(Ink.Strong, group.Section.Title(), "", "", "", group.Total is { } sum ? style.Value(sum) : "");
            foreach (var line in group.Lines)
            {
                table.Row(line.Cost is null ? Ink.Warning : Ink.Plain,
                    "  " + line.Part, style.Write(line.Quantity), line.Packs is { } packs ? Style.Number(packs.Si, Units.One) : "",
                    PriceOf(line.Price, assessment.Plan.Currency), line.Cost is { } cost ? style.Value(cost) : "no price");
            }
        }
        table.Rule();
        Sum("Parts", "build.parts");
        Sum("Delivery", "build.delivery");
        Sum("Sales tax", "build.tax");
        Sum("Spare money", "build.spare");
        table.Rule();
        var total = figures["build.total"];
        table.Row(Ink.Strong, assessment.Build.Complete ? "Total" : "Total, incomplete", "", "", "", style.Value(total));
        sheet.Add(table);
        if (style.Range(total) is { Length: > 0 } range)
        {
            sheet.Say($"8 in 10: {range} {assessment.Plan.Currency}.", Ink.Plain, 2);
        }
        if (!assessment.Build.Complete)
        {
            var parts = assessment.Build.Unpriced;
            sheet.Say(
                $"! The total is incomplete: {(parts.Count == 1 ? "1 part has" : $"{parts.Count} parts have")} no price: {string.Join(", ", parts)}. "
                + "Add them under prices: in the plan; “owned” is a price too.", Ink.Warning, 2, 2);
        }

        void Sum(string name, string id)
        {
            if (figures.Find(id) is { } figure)
            {
                table.Row(name, "", "", How(figure), style.Value(figure));
            }
        }

        string How(Figure figure) => figure is { Id: "build.spare" or "build.tax", How: Product { Factors: [_, var share] } } ? style.Write(share) : "";
    }

    private static string PriceOf(Price? price, string currency)
    {
        if (price is null)
        {
            return "";
        }
        if (price.Condition == Condition.Owned)
        {
            return "owned";
        }
        var each = PriceWords.PriceFor(price);
        var money = Style.Number(price.Amount.Likely, Unit.Money(currency));
        var foreign = price.Currency.Length > 0 && !price.Currency.Equals(currency, StringComparison.OrdinalIgnoreCase) ? " " + price.Currency : "";
        return $"{money}{foreign}{(each == "each" ? "" : $" per {each}")}{(price.Condition == Condition.Used ? ", used" : "")}";
    }
}
