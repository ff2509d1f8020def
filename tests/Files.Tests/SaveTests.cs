using System.Text;

namespace Runnel.Files.Tests;

/// <summary>Saving: whole or not at all, and never over someone else's change.</summary>
public sealed class SaveTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("runnel-files-");

    private string Plan => Path.Combine(folder.FullName, "plan.yaml");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void A_change_is_written_byte_for_byte_and_nothing_else_is_left()
    {
        var bytes = Encoding.UTF8.GetBytes("\uFEFF" + Plans.With("# ü\n").Replace("\n", "\r\n", StringComparison.Ordinal));
        File.WriteAllBytes(Plan, bytes);
        var file = PlanFile.Read(Plan);
        Assert.Equal("plan.yaml", file.FileName);
        file.Save();
        Assert.Equal(bytes, File.ReadAllBytes(Plan));
        file.With("pumps/pump/watts", "9 W").Save();
        Assert.Equal(Encoding.UTF8.GetString(bytes).Replace("8 W", "9 W", StringComparison.Ordinal), Encoding.UTF8.GetString(File.ReadAllBytes(Plan)));
        Assert.Single(folder.GetFiles());
    }

    [Fact]
    public void Saving_again_after_saving_works()
    {
        File.WriteAllText(Plan, Plans.With(""));
        var once = PlanFile.Read(Plan).With("pumps/pump/watts", "9 W");
        once.Save();
        once.With("pumps/pump/watts", "10 W").Save();
        Assert.Contains("10 W", File.ReadAllText(Plan), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_someone_changed_is_left_as_it_is()
    {
        File.WriteAllText(Plan, Plans.With(""));
        var file = PlanFile.Read(Plan).With("pumps/pump/watts", "9 W");
        var theirs = Plans.With("# changed in an editor\n");
        File.WriteAllText(Plan, theirs);
        var refused = Assert.Throws<PlanSaveException>(file.Save);
        Assert.Contains("changed by someone else", refused.Message, StringComparison.Ordinal);
        Assert.Equal(theirs, File.ReadAllText(Plan));
        Assert.Single(folder.GetFiles());
    }

    [Fact]
    public void A_file_that_was_removed_does_not_come_back()
    {
        File.WriteAllText(Plan, Plans.With(""));
        var file = PlanFile.Read(Plan);
        File.Delete(Plan);
        Assert.Throws<PlanSaveException>(file.Save);
        Assert.Empty(folder.GetFiles());
    }

    [Fact]
    public void Text_that_came_from_nowhere_cannot_be_saved() =>
        Assert.Throws<PlanSaveException>(PlanFile.Parse(Plans.With(""), "plan.yaml").Save);

    [Fact]
    public void A_file_that_cannot_be_read_is_an_error_not_an_exception()
    {
        Assert.Contains("no such file", Assert.Single(PlanFile.Read(Plan).Errors).Problem, StringComparison.Ordinal);
        Assert.Single(PlanFile.Read(folder.FullName).Errors);
        File.WriteAllBytes(Plan, [0x72, 0x75, 0xFF, 0xFE, 0x0A]);
        Assert.Contains("UTF-8", Assert.Single(PlanFile.Read(Plan).Errors).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_price_list_is_found_in_the_folder_of_the_plan()
    {
        File.WriteAllText(Plan, Plans.With("price list: list.yaml\n"));
        File.WriteAllText(Path.Combine(folder.FullName, "list.yaml"), "prices:\n  thing: 5 EUR\n");
        Assert.Equal(5, PlanFile.Read(Plan).Plan!.Prices["thing"].Amount.Likely);
    }

    [Fact]
    public void Permissions_and_links_stay()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }
        var real = Path.Combine(folder.FullName, "real.yaml");
        File.WriteAllText(real, Plans.With(""));
        File.SetUnixFileMode(real, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
        File.CreateSymbolicLink(Plan, real);
        PlanFile.Read(Plan).With("pumps/pump/watts", "9 W").Save();
        Assert.NotNull(new FileInfo(Plan).LinkTarget);
        Assert.Contains("9 W", File.ReadAllText(real), StringComparison.Ordinal);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead, File.GetUnixFileMode(real));
    }
}
