CREATE TABLE `harnesses` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`harness` text NOT NULL,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `harnesses_job` ON `harnesses` (`job_id`);