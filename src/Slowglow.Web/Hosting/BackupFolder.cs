namespace Slowglow.Web.Hosting;

/// <param name="Path">Folder of the nightly backups.</param>
internal sealed record BackupFolder(string Path);
