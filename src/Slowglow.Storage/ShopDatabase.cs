using Microsoft.EntityFrameworkCore;
using Slowglow.Storage.Mappings;
using Slowglow.Storage.Records;
using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Stock;
using Slowglow.Workshop.Timeline;
using Slowglow.Workshop.Units;
using Slowglow.Workshop.Words;

namespace Slowglow.Storage;

/// <summary>The shop's records. One model for every kind of database; migrations stand in a project per kind.</summary>
public class ShopDatabase(DbContextOptions<ShopDatabase> options) : DbContext(options)
{
    public DbSet<Job> Jobs => Set<Job>();
    public DbSet<Customer> Customers => Set<Customer>();
    public DbSet<DrawnSheet> Sheets => Set<DrawnSheet>();
    public DbSet<TimelineEntry> Timeline => Set<TimelineEntry>();
    public DbSet<BoardCard> Board => Set<BoardCard>();
    public DbSet<KeptPaper> Papers => Set<KeptPaper>();
    public DbSet<KeptPhoto> Photos => Set<KeptPhoto>();

    public DbSet<StockItem> Stock => Set<StockItem>();

    public DbSet<ShopSettings> Settings => Set<ShopSettings>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.ApplyConfigurationsFromAssembly(typeof(ShopDatabase).Assembly);
        TimelineRecords.Map(modelBuilder);
    }

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder) =>
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UnixMillisecondsConverter>();

    /// <inheritdoc/>
    public override int SaveChanges(bool acceptAllChangesOnSuccess)
    {
        RefuseRewriting();
        return base.SaveChanges(acceptAllChangesOnSuccess);
    }

    /// <inheritdoc/>
    public override Task<int> SaveChangesAsync(bool acceptAllChangesOnSuccess, CancellationToken cancellationToken = default)
    {
        RefuseRewriting();
        return base.SaveChangesAsync(acceptAllChangesOnSuccess, cancellationToken);
    }

    private void RefuseRewriting()
    {
        if (ChangeTracker.Entries<TimelineEntry>().Any(e => e.State is EntityState.Modified or EntityState.Deleted))
        {
            throw new InvalidOperationException("The timeline is append-only: a correction is a new entry.");
        }

        if (ChangeTracker.Entries<KeptPaper>().Any(e => e.State is EntityState.Modified or EntityState.Deleted))
        {
            throw new InvalidOperationException("A paper that was issued stays as it is: a credit note puts it right.");
        }

        if (ChangeTracker.Entries<StockMove>().Any(e => e.State is EntityState.Modified or EntityState.Deleted))
        {
            throw new InvalidOperationException("A move of stock stays as it is: another move puts it right.");
        }

        if (ChangeTracker.Entries<KeptPhoto>().Any(e => e.State is EntityState.Modified or EntityState.Deleted))
        {
            throw new InvalidOperationException("A photograph stays as it is: strike its entry out.");
        }
    }
}
