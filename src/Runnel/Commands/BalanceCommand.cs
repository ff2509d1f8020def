using System.ComponentModel;
using Runnel.App;
using Runnel.App.Report;
using Runnel.Catalogue;
using Runnel.Engine.Assess;
using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;
using Runnel.Host.Commands.Print;
using Spectre.Console.Cli;

namespace Runnel.Host.Commands;

/// <summary>What <c>balance</c> takes: a plan, or one end of the balance.</summary>
internal sealed class BalanceSettings : AssessSettings
{
    [CommandArgument(0, "[PLAN]")]
    [Description("The plan file of your loop; leave it out to start from a number")]
    public string? Plan { get; init; }

    [CommandOption("--from <END>")]
    [Description("With a plan: solve the rest from its beds, fish, feed or tank")]
    public string? From { get; init; }

    [CommandOption("--beds <AREA>")]
    [Description("Start from planted area, such as 4m2")]
    public string? Beds { get; init; }

    [CommandOption("--fish <WEIGHT>")]
    [Description("Start from the weight of all fish, such as 20kg")]
    public string? Fish { get; init; }

    [CommandOption("--feed <WEIGHT>")]
    [Description("Start from the feed of a day, such as 200g")]
    public string? Feed { get; init; }

    [CommandOption("--tank <VOLUME>")]
    [Description("Start from the water in the fish tank, such as 1000L")]
    public string? Tank { get; init; }
}

/// <summary>Feed, fish, beds, filter and oxygen against each other.</summary>
internal sealed class BalanceCommand(Terminal terminal) : Command<BalanceSettings>
{
    public override int Execute(CommandContext context, BalanceSettings settings, CancellationToken cancellationToken)
    {
        _ = settings.System;
        var given = Given(settings);
        if (settings.Plan is null)
        {
            if (settings.From is { } from)
            {
                throw new RefusedException("--from", from, "there is no plan to take it from", $"name a plan, or give a number: {CommandLine.Name} balance --{from} …");
            }
            if (given is null)
            {
                throw new RefusedException("balance", "", "there is nothing to start from", $"name a plan, or one end: {CommandLine.Name} balance --beds 4m2");
            }
            return FromNumber(given.Value, settings);
        }
        if (given is not null)
        {
            throw new RefusedException($"--{BalanceEnds.Word(given.Value.End)}", given.Value.Text, "a plan was named too", "leave the plan out, or use --from beds, fish, feed or tank");
        }
        var plan = OpenedPlan.Read(settings.Plan, settings, cancellationToken);
        if (settings.From is { } word)
        {
            return FromPlan(plan, BalanceEnds.Read(word), settings);
        }
        if (!plan.ShowWorking(settings, terminal, "balance"))
        {
            if (settings.Json)
            {
                terminal.Out.WriteLine(ReportJson.Write(new ReportMaker(plan.Style).Balance(plan.Assessment, plan.Path)));
            }
            else
            {
                BalancePage.Print(terminal, plan);
            }
        }
        return plan.Code(settings);
    }

    private static (BalanceEnd End, string Text)? Given(BalanceSettings settings)
    {
        List<(BalanceEnd End, string Text)> given = [];
        Add(BalanceEnd.Beds, settings.Beds);
        Add(BalanceEnd.Fish, settings.Fish);
        Add(BalanceEnd.Feed, settings.Feed);
        Add(BalanceEnd.Tank, settings.Tank);
        return given.Count switch
        {
            0 => null,
            1 => given[0],
            _ => throw new RefusedException("balance", string.Join(" ", given.Select(g => $"--{BalanceEnds.Word(g.End)} {g.Text}")),
                "that is more than one end", "give one; the others follow from it"),
        };

        void Add(BalanceEnd end, string? text)
        {
            if (text is not null)
            {
                given.Add((end, text));
            }
        }
    }

    private int FromNumber((BalanceEnd End, string Text) given, BalanceSettings settings)
    {
        var style = settings.In(new Style());
        return Solve(given.End, BalanceEnds.Amount(given.End, given.Text), BalanceInputs.Handbook, style, settings, null,
            $"{CommandLine.Name} balance --{BalanceEnds.Word(given.End)} {given.Text}");
    }

    private int FromPlan(OpenedPlan plan, BalanceEnd end, BalanceSettings settings)
    {
        var amount = BalanceEnds.Of(plan.Assessment, end);
        _ = Solve(end, amount, BalanceInputs.Of(plan.Assessment.Plan, Shelves.Standard), plan.Style, settings, plan,
            $"{CommandLine.Name} balance {plan.Typed} --from {BalanceEnds.Word(end)}");
        return plan.Code(settings);
    }

    private int Solve(
        BalanceEnd end, Estimate amount, BalanceInputs inputs, Style style, BalanceSettings settings, OpenedPlan? plan, string command)
    {
        FigureBook book;
        try
        {
            book = BalanceSolver.Solve(end, amount, inputs, settings.CheckedDraws);
        }
        catch (ArgumentOutOfRangeException e) when (e.ActualValue is double)
        {
            throw new RefusedException($"--{BalanceEnds.Word(end)}", style.Write(new Amount(amount.Likely, amount.Unit)), "that lies outside what the rules hold for",
                "check the number and its unit");
        }
        if (OpenedPlan.ShowWorking(book, style, settings, terminal, command))
        {
            return OpenedPlan.Computed;
        }
        if (settings.Json)
        {
            terminal.Out.WriteLine(ReportJson.Write(new ReportMaker(style).Balance(book, settings.CheckedDraws, plan?.Assessment.Plan.Name, plan?.Path)));
        }
        else
        {
            BalancePage.Print(terminal, book, end, amount, style, plan, command);
        }
        return OpenedPlan.Computed;
    }
}
