# Recomputes reliability-lme4.json: Rscript reliability-lme4.R > reliability-lme4.json
# Needs R with lme4; the tests need only the JSON file. All data are invented, but for the set with its source.
suppressPackageStartupMessages(library(lme4))

json <- function(x) {
  if (is.list(x)) {
    if (is.null(names(x))) return(paste0("[", paste(sapply(x, json), collapse = ", "), "]"))
    return(paste0("{", paste0("\"", names(x), "\": ", sapply(x, json), collapse = ",\n  "), "}"))
  }
  one <- function(v) if (is.character(v)) paste0("\"", v, "\"") else if (v == round(v, 1)) format(v) else sprintf("\"%.12g\"", v)
  if (length(x) == 1) one(x) else paste0("[", paste(sapply(x, one), collapse = ", "), "]")
}

rows <- function(text) read.table(text = text, col.names = c("subject", "measurer", "repeat", "mm"))

# Ten subjects, three measurers, once each; seven cells are missing. Back lengths in mm.
once <- rows("
s01 ann 1 432
s01 ben 1 437
s01 cat 1 430
s02 ann 1 468
s02 cat 1 465
s03 ann 1 401
s03 ben 1 411
s03 cat 1 404
s04 ben 1 455
s04 cat 1 446
s05 ann 1 489
s05 ben 1 494
s06 ann 1 443
s06 ben 1 452
s06 cat 1 440
s07 cat 1 418
s08 ann 1 476
s08 ben 1 478
s08 cat 1 471
s09 ann 1 425
s09 ben 1 436
s10 ann 1 460
s10 ben 1 463
s10 cat 1 458
")

# Eight subjects, three measurers, up to three readings; cells of unequal size, two empty.
repeated <- rows("
s1 ann 1 441
s1 ann 2 444
s1 ann 3 439
s1 ben 1 452
s1 ben 2 449
s1 cat 1 440
s1 cat 2 437
s2 ann 1 478
s2 ann 2 473
s2 ben 1 476
s2 ben 2 480
s2 ben 3 477
s2 cat 1 485
s3 ann 1 413
s3 ben 1 421
s3 ben 2 425
s3 cat 1 405
s3 cat 2 409
s3 cat 3 404
s4 ann 1 466
s4 ann 2 462
s4 ben 1 471
s4 ben 2 469
s5 ben 1 438
s5 cat 1 424
s5 cat 2 429
s6 ann 1 495
s6 ann 2 491
s6 ann 3 494
s6 ben 1 499
s6 cat 1 486
s6 cat 2 490
s7 ann 1 427
s7 ann 2 430
s7 ben 1 433
s7 ben 2 428
s7 cat 1 434
s7 cat 2 431
s8 ann 1 452
s8 ben 1 449
s8 ben 2 455
s8 ben 3 451
s8 cat 1 447
")

# As before in shape, but the measurers do not differ beyond chance: their variance is estimated as 0.
alike <- rows("
s1 ann 1 431
s1 ben 1 437
s1 cat 1 428
s2 ann 1 470
s2 ben 1 462
s2 cat 1 466
s3 ann 1 404
s3 cat 1 410
s4 ann 1 453
s4 ben 1 447
s4 cat 1 455
s5 ben 1 492
s5 cat 1 485
s6 ann 1 440
s6 ben 1 447
s7 ann 1 419
s7 ben 1 415
s7 cat 1 412
")

# Twelve subjects read one to four times by one measurer.
single <- rows("
s01 ann 1 902
s01 ann 2 911
s01 ann 3 899
s02 ann 1 845
s03 ann 1 967
s03 ann 2 972
s03 ann 3 960
s03 ann 4 969
s04 ann 1 934
s04 ann 2 921
s05 ann 1 1012
s05 ann 2 1004
s06 ann 1 888
s06 ann 2 880
s06 ann 3 893
s07 ann 1 951
s08 ann 1 876
s08 ann 2 884
s09 ann 1 925
s09 ann 2 933
s09 ann 3 922
s10 ann 1 990
s11 ann 1 861
s11 ann 2 855
s11 ann 3 868
s11 ann 4 859
s12 ann 1 940
s12 ann 2 949
")

# Shrout & Fleiss (1979), Psychological Bulletin 86, 420-428, Table 2: six targets, four judges; moved up by 100,
# since lengths are above 0.
shrout <- data.frame(
  subject = rep(paste0("t", 1:6), each = 4), measurer = rep(paste0("j", 1:4), 6), `repeat` = 1,
  mm = 100 + c(9, 2, 5, 8, 6, 1, 3, 2, 8, 4, 6, 8, 7, 1, 2, 6, 10, 5, 6, 9, 6, 2, 4, 7), check.names = FALSE)

control <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-10, maxfun = 1e5), check.conv.singular = "ignore")
# The slope of the criterion is driven to 0 by Newton steps in the relative standard deviations, in which bobyqa's
# answer has about seven digits; a standard deviation at 0 is left there.
polish <- function(f, theta) {
  moving <- which(theta > 1e-4)
  theta[theta <= 1e-4] <- 0
  if (length(moving)) {
    g <- function(x) { t <- theta; t[moving] <- exp(x); f(t) }
    slope <- function(x, h = 2e-3) sapply(seq_along(x), function(i) {
      e <- replace(numeric(length(x)), i, 1)
      # Central differences of the eighth order.
      w <- c(4 / 5, -1 / 5, 4 / 105, -1 / 280)
      sum(sapply(1:4, function(k) w[k] * (g(x + k * h * e) - g(x - k * h * e)))) / h
    })
    x <- log(theta[moving])
    for (step in 1:6) {
      s <- slope(x)
      H <- sapply(seq_along(x), function(i) {
        e <- replace(numeric(length(x)), i, 1e-3)
        (slope(x + e) - slope(x - e)) / 2e-3
      })
      x <- x - solve(matrix(H, length(x)), s)
    }
    theta[moving] <- exp(x)
  }
  f(theta)
  list(theta = theta, criterion = f(theta))
}

fitted <- function(name, source, data, formula) {
  fit <- lmer(formula, data, REML = TRUE, control = control)
  parsed <- lFormula(formula, data, REML = TRUE)
  dev <- do.call(mkLmerDevfun, parsed)
  best <- polish(dev, getME(fit, "theta"))
  held <- mkMerMod(environment(dev), list(par = best$theta, fval = best$criterion, conv = 0), parsed$reTrms, fr = parsed$fr)
  v <- as.data.frame(VarCorr(held))
  part <- function(group) { x <- v$vcov[v$grp == group]; if (length(x)) x else 0 }
  list(name = name, source = source, terms = deparse(formula), readings = lapply(seq_len(nrow(data)), function(i)
      list(subject = as.character(data$subject[i]), measurer = as.character(data$measurer[i]),
           `repeat` = data$`repeat`[i], mm = data$mm[i])),
    subjectVariance = part("subject"), measurerVariance = part("measurer"), interactionVariance = part("subject:measurer"),
    residualVariance = part("Residual"), mean = unname(fixef(held)), meanError = sqrt(vcov(held)[1, 1]),
    criterion = best$criterion)
}
names(once)[3] <- names(repeated)[3] <- names(alike)[3] <- names(single)[3] <- "repeat"

invented <- "invented"
crossed <- mm ~ 1 + (1 | subject) + (1 | measurer)
cat(json(list(
  origin = paste0("recomputed with R ", getRversion(), ", lme4 ", packageVersion("lme4")),
  fits = list(
    fitted("crossed, missing cells", invented, once, crossed),
    fitted("crossed with interaction, unequal repeats", invented, repeated, mm ~ 1 + (1 | subject) + (1 | measurer) + (1 | subject:measurer)),
    fitted("crossed, unequal repeats, no interaction", invented, repeated, crossed),
    fitted("measurers alike, variance at 0", invented, alike, crossed),
    fitted("one measurer, unequal repeats", invented, single, mm ~ 1 + (1 | subject)),
    fitted("balanced", "Shrout & Fleiss (1979), Table 2, plus 100", shrout, crossed)
  ))), "\n")
