namespace Runnel;

/// <summary>Where the repository is, from wherever its tests run.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Runnel.slnx")))
            {
                return folder.FullName;
            }
        }
        throw new DirectoryNotFoundException("the tests run outside the repository");
    }
}
